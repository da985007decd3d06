"""Findings turned into sections, tables and sentences; no fonts, no pages."""
