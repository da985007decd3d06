"""A report as one HTML file that needs nothing else: style, picture and words in one."""

from __future__ import annotations

import base64
from collections.abc import Iterator
from html import escape

from analysis.reports.document import Report, Section, Table

_STYLE = """
body { font: 16px/1.5 system-ui, sans-serif; color: #22262b; background: #fff; max-width: 60rem;
  margin: 2rem auto; padding: 0 1.5rem; }
h1 { font-size: 1.3rem; margin: 0; } h2 { font-size: 1.05rem; margin: 1.8rem 0 .4rem; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: 0 1rem; color: #555; margin: .6rem 0; }
dt, dd { margin: 0; } .verdict { font-size: 1.5rem; font-weight: 600; margin: 1.2rem 0 .3rem; }
.customer { border-left: 4px solid #22262b; padding-left: .8rem; font-size: 1.1rem; }
table { border-collapse: collapse; width: 100%; font-size: .9rem; }
th, td { text-align: left; vertical-align: top; padding: .25rem .7rem .25rem 0;
  border-bottom: 1px solid #ccc; }
svg, img { max-width: 100%; height: auto; } figure { margin: 1rem 0; }
figcaption { color: #555; font-size: .9rem; }
li, td, dd { overflow-wrap: anywhere; }
@media print { body { margin: 0; font-size: 11pt; } section { break-inside: avoid; } }
"""


def report_html(
    report: Report,
    *,
    customer: str = "",
    svg: str = "",
    svg_caption: str = "",
    picture_png: bytes = b"",
    picture_caption: str = "",
) -> str:
    """The whole page.

    Parameters
    ----------
    report : Report
        What to print; every word of it is escaped.
    customer : str
        The sentence for the customer; empty for none.
    svg : str
        A drawing that `app.track_picture` made, put in as it is.
    picture_png : bytes
        A picture; empty for none.
    svg_caption, picture_caption : str
        What the two show.
    """
    title = escape(report.title)
    parts = [
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">',
        # Nothing may be fetched or run, whatever a capture's words say.
        '<meta http-equiv="Content-Security-Policy"'
        " content=\"default-src 'none'; img-src data:; style-src 'unsafe-inline'\">",
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        f"<title>{title}</title>\n<style>{_STYLE}</style>\n</head>\n<body>",
        f"<h1>{title}</h1>",
        _subject(report.subject),
        f'<p class="verdict">{escape(report.headline)}</p>',
        *(f"<p>{escape(sentence)}</p>" for sentence in report.lead),
    ]
    if customer:
        parts.append(f'<h2>For the customer</h2>\n<p class="customer">{escape(customer)}</p>')
    if svg:
        parts.append(f"<figure>{svg}<figcaption>{escape(svg_caption)}</figcaption></figure>")
    parts.extend(_section(item) for item in report.sections)
    if picture_png:
        data = base64.b64encode(picture_png).decode("ascii")
        caption = escape(picture_caption)
        parts.append(
            f'<figure><img src="data:image/png;base64,{data}" alt="{caption}">'
            f"<figcaption>{caption}</figcaption></figure>"
        )
    return "\n".join([*parts, "</body>\n</html>\n"])


def _subject(subject: tuple[tuple[str, str], ...]) -> str:
    rows = "".join(f"<dt>{escape(name)}</dt><dd>{escape(value)}</dd>" for name, value in subject)
    return f"<dl>{rows}</dl>"


def _section(section: Section) -> str:
    return "\n".join([f"<section><h2>{escape(section.title)}</h2>", *_body(section), "</section>"])


def _body(section: Section) -> Iterator[str]:
    for sentence in section.sentences:
        yield f"<p>{escape(sentence)}</p>"
    if section.items:
        yield "<ul>" + "".join(f"<li>{escape(item)}</li>" for item in section.items) + "</ul>"
    if section.table is not None and section.table.rows:
        yield _table(section.table)


def _table(table: Table) -> str:
    heads = "".join(f"<th>{escape(head)}</th>" for head in table.heads)
    rows = "\n".join(
        "<tr>" + "".join(f"<td>{escape(cell)}</td>" for cell in row) + "</tr>" for row in table.rows
    )
    return f"<table>\n<tr>{heads}</tr>\n{rows}\n</table>"
