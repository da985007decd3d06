"""Why it comes and goes: the window's picture, choices and words for it, and a control unit under Trace."""
