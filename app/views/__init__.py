"""The panes of the window, one thing drawn in each."""
