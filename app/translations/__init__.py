"""The catalogues of the languages other than English, and the errand that keeps them complete.

A catalogue is one Qt Linguist file, ``wornband_<code>.ts``, and the only form there is: it is read as it
stands, for the window as for the reports, and nothing is compiled. `python -m app.translations` brings every
catalogue up to date with the sources.
"""
