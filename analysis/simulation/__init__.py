"""The physics of a sensor, its circuit, a hand and a road: for samples, calibration and tests."""
