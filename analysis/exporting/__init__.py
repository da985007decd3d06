"""Captures and findings for other programs, readable for years without this one."""
