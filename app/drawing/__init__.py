"""What the panes share: items on plots, the theme, icons and number formats."""
