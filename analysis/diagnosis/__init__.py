"""From break-up to bands, checks, evidence, verdict and advice."""
