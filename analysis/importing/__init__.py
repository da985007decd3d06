"""Tables of other programs become captures: read, understood, checked, and written as evidence."""
