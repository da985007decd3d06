"""What a control unit makes of a signal: its rules, its patience, and which fault it would have stored."""
