"""What the technician decides about a capture: kept beside it, never in it."""
