"""A report as one HTML file that needs nothing else: style, pictures and words in one, and no script."""

from __future__ import annotations

import base64
import hashlib
from collections.abc import Callable
from html import escape
from typing import Any

from analysis.reports.pages import (
    Block,
    Boxes,
    Columns,
    Facts,
    Grid,
    Heading,
    Items,
    Page,
    Paragraph,
    Photos,
    Picture,
    Signatures,
    Style,
)
from app.printable import printable
from app.reporting.fingerprints import HTML_NAME
from app.reporting.images import Image
from app.reporting.materials import Materials
from app.reporting.svg import svg

_STYLE = """
:root { color-scheme: light; }
body { font: 16px/1.45 system-ui, "Segoe UI", "DejaVu Sans", sans-serif; color: #22262b; background: #fff;
  max-width: 52rem; margin: 1.5rem auto; padding: 0 1.2rem; overflow-wrap: anywhere; }
header { display: flex; justify-content: space-between; gap: 1.5rem; border-bottom: 2px solid #22262b;
  padding-bottom: .5rem; }
header p { margin: 0; } header img { max-height: 4.5rem; max-width: 14rem; }
h1 { font-size: 1.35rem; margin: 0 0 .2rem; } h2 { font-size: 1.15rem; margin: 2.2rem 0 .3rem; }
h3 { font-size: 1rem; margin: 1rem 0 .15rem; } p { margin: .2rem 0; }
.lead { font-size: 1.15rem; font-weight: 600; border: 2px solid #22262b; padding: .5rem .7rem;
  margin: .3rem 0; }
.small, figcaption, footer { font-size: .85rem; color: #444; }
dl { display: grid; grid-template-columns: max-content 1fr; gap: .1rem 1rem; margin: .4rem 0; }
dt { color: #444; } dd { margin: 0; }
table { border-collapse: collapse; width: 100%; font-size: .82rem; margin: .3rem 0; }
th, td { text-align: start; vertical-align: top; padding: .2rem .6rem .2rem 0;
  overflow-wrap: break-word; border-bottom: 1px solid #bbb; }
figure { margin: .6rem 0; } svg { width: 100%; height: auto; display: block; }
ul { margin: .2rem 0; padding-inline-start: 1.2rem; } ul.boxes { list-style: none; padding: 0; }
.photos { display: flex; flex-wrap: wrap; gap: 1rem; } .photos figure { width: 15rem; margin: 0; }
.photos img { max-width: 100%; } .sign { display: flex; gap: 2rem; margin-top: 2.6rem; }
.sign span { flex: 1; border-top: 1px solid #22262b; font-size: .85rem; }
footer { border-top: 1px solid #bbb; margin-top: 2rem; padding-top: .3rem; }
@media print { body { margin: 0; max-width: none; font-size: 10.5pt; } .page + .page { break-before: page; }
  figure, tr, .lead { break-inside: avoid; } h2, h3 { break-after: avoid; } }
"""


def report_html(materials: Materials) -> str:
    """The whole report as the text of a file, in UTF-8."""
    pages = materials.pages
    parts = [
        f'<!DOCTYPE html>\n<html lang="{escape(pages.language)}">\n<head>\n<meta charset="utf-8">',
        f'<meta http-equiv="Content-Security-Policy" content="{_policy()}">',
        '<meta name="viewport" content="width=device-width, initial-scale=1">',
        *_fingerprint(pages.fingerprint),
        f"<title>{_words(pages.title)}</title>\n<style>{_STYLE}</style>\n</head>\n<body>",
        _header(materials),
        "<main>",
        *(_page(page, materials) for page in pages.pages),
        "</main>",
        f"<footer><p>{_own(pages.footer)}</p></footer>",
        "</body>\n</html>\n",
    ]
    return "\n".join(parts)


def _fingerprint(digest: str) -> list[str]:
    return [f'<meta name="{HTML_NAME}" content="{escape(digest)}">'] if digest else []


def _policy() -> str:
    """Nothing may be fetched or run, whatever a capture's words say; the one style sheet is named."""
    digest = base64.b64encode(hashlib.sha256(_STYLE.encode()).digest()).decode()
    return f"default-src 'none'; img-src data:; style-src 'sha256-{digest}'"


def _words(text: str) -> str:
    """Escaped, and without characters that act on what reads them."""
    return escape("\n".join(printable(line) for line in text.splitlines()))


def _own(text: str) -> str:
    """Words that may be in any script: their direction stays their own."""
    return f"<bdi>{_words(text)}</bdi>"


def _header(materials: Materials) -> str:
    workshop = materials.pages.workshop
    lines = [f"<strong>{_own(workshop.name)}</strong>"] if workshop.name else []
    lines += [_own(line) for line in workshop.lines]
    who = f"<p>{'<br>'.join(lines)}</p>" if lines else ""
    logo = materials.images.get(workshop.logo)
    image = _image(logo, workshop.name) if logo is not None else ""
    return f"<header><div><h1>{_own(materials.pages.title)}</h1>{who}</div>{image}</header>"


def _image(image: Image, description: str) -> str:
    data = base64.b64encode(image.data).decode("ascii")
    return (
        f'<img src="data:{image.kind};base64,{data}" alt="{_words(description)}" width="{image.width}"'
        f' height="{image.height}">'
    )


def _page(page: Page, materials: Materials) -> str:
    blocks = "\n".join(_block(block, materials) for block in page.blocks)
    return f'<section class="page">\n<h2>{_words(page.title)}</h2>\n{blocks}\n</section>'


def _block(block: Block, materials: Materials) -> str:
    return _MAKERS[type(block)](block, materials)


def _heading(block: Heading, _: Materials) -> str:
    return f"<h3>{_words(block.text)}</h3>"


def _paragraph(block: Paragraph, _: Materials) -> str:
    name = f' class="{block.style}"' if block.style is not Style.BODY else ""
    lines = "<br>".join(_words(line) for line in block.text.splitlines())
    return f'<p{name} dir="auto">{lines}</p>'


def _facts(block: Facts, _: Materials) -> str:
    rows = "".join(f"<dt>{_words(name)}</dt><dd>{_own(value)}</dd>" for name, value in block.rows)
    return f"<dl>{rows}</dl>"


def _items(block: Items, _: Materials) -> str:
    return "<ul>" + "".join(f"<li>{_own(item)}</li>" for item in block.items) + "</ul>"


def _boxes(block: Boxes, _: Materials) -> str:
    rows = (f"<li>{'☒' if done else '☐'} {_words(text)}</li>" for text, done in block.items)
    return f'<ul class="boxes">{"".join(rows)}</ul>'


def _grid(block: Grid, _: Materials) -> str:
    heads = "".join(f'<th scope="col">{_words(head)}</th>' for head in block.table.heads)
    rows = "\n".join(
        "<tr>" + "".join(f"<td>{_own(cell)}</td>" for cell in row) + "</tr>" for row in block.table.rows
    )
    return f"<table>\n<thead><tr>{heads}</tr></thead>\n<tbody>\n{rows}\n</tbody>\n</table>"


def _picture(block: Picture, _: Materials) -> str:
    return f"<figure>{svg(block.drawing)}<figcaption>{_words(block.caption)}</figcaption></figure>"


def _photos(block: Photos, materials: Materials) -> str:
    figures = []
    for photo in block.photos:
        image = materials.images.get(photo.path)
        if image is not None:
            caption = f"<figcaption>{_own(photo.caption)}</figcaption>" if photo.caption else ""
            figures.append(f"<figure>{_image(image, photo.caption)}{caption}</figure>")
    return f'<div class="photos">{"".join(figures)}</div>'


def _signatures(block: Signatures, _: Materials) -> str:
    return f'<p class="sign">{"".join(f"<span>{_words(label)}</span>" for label in block.labels)}</p>'


def _columns(block: Columns, materials: Materials) -> str:
    """One below the other: a screen is scrolled, and a narrow one has no room for two."""
    return "\n".join(_block(item, materials) for item in block.blocks)


_MAKERS: dict[type, Callable[[Any, Materials], str]] = {
    Heading: _heading,
    Paragraph: _paragraph,
    Facts: _facts,
    Items: _items,
    Boxes: _boxes,
    Grid: _grid,
    Picture: _picture,
    Photos: _photos,
    Signatures: _signatures,
    Columns: _columns,
}
