"""``python -m app`` is the ``wornband`` command."""

from __future__ import annotations

import sys

from app.command_line import main

if __name__ == "__main__":
    sys.exit(main())
