"""The Watch page: a folder is watched, and what is missing is shown so that it can be read from the car."""
