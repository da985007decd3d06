"""The physics of a sensor, its circuit, a hand and a road: for samples, calibration and tests.

The story, in the order of the signal: `hand` and `road` move the arm; `track` is what the wiper rides on;
`circuit` is the node behind it; `disturbances` act on the wires and `measurement_faults` on the probes;
`recorder` turns volts into counts. `scenario` describes one visit, `bench` takes its capture and `truth`
says what it holds. `draws`, `families` and `corpus` make any number of them; `alternatives` breaks the
contact by other physics; `sample_workshop`, `sample_visits`, `samples` and `registry` make the samples.
"""
