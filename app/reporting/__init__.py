"""The report made: as one HTML file, as pages for screen, printer and PDF, and the errand that writes it."""
