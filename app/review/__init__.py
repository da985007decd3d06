"""The Review screen at work: what is looked at, the arm, markers, decisions, and the file that keeps them."""
