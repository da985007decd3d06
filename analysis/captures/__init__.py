"""Captures: the model, the file layout, reading, writing, overviews and fingerprints."""
