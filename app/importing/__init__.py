"""The Import page at work: files are looked at, understood, and brought in as one capture."""
