"""Two captures, or two records, set against each other: what differs, and whether it is more than chance."""
