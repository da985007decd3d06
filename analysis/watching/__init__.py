"""A folder that a recorder saves into is watched: what arrives joins one capture, judged as a whole."""
