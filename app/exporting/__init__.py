"""What leaves the window for other programs: samples, findings, pictures."""
