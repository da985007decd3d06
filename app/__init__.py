"""The workbench and the command line: what a technician sees and touches."""
