"""The errands of the command line, a module each, and what they share."""
