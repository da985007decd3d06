"""Why it comes and goes: how often a drive takes the sensor into a band, and whether a code would set."""
