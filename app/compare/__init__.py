"""The Compare screen at work: its desk, both sides, and what makes the comparison."""
