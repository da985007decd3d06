"""The numbers of Wornband: from a stored capture to findings. Never loads a user interface.

In a notebook::

    from analysis.captures.reading import open_capture
    from analysis.diagnosis.examine import examine

    with open_capture("sample_captures/W1041-rear-left-height.h5") as opened:
        findings = examine(opened.capture)
    print(findings.verdict.summary)
"""

__version__ = "0.1.0"
"""Version of the analysis; every finding says which one made it."""
