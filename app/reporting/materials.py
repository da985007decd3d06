"""Everything that a report is laid out from: its pages and the pictures that they name, loaded."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from pathlib import Path

from analysis.reports.pages import Pages, Photos
from app.reporting.images import Image, ImageError, load_image


@dataclass(frozen=True, slots=True)
class Materials:
    """Pages with their pictures.

    Parameters
    ----------
    pages : Pages
        What is said.
    images : mapping of str to Image
        By the path that the pages name.
    troubles : tuple of str
        One sentence for each picture that could not be used; the report is made without it.
    """

    pages: Pages
    images: Mapping[str, Image] = field(default_factory=dict)
    troubles: tuple[str, ...] = ()


def gather(pages: Pages, folder: Path) -> Materials:
    """Load the logo and the photos that the pages name.

    Parameters
    ----------
    pages : Pages
        Of a report.
    folder : Path
        Where relative paths begin: the capture's.
    """
    wanted = [pages.workshop.logo] if pages.workshop.logo else []
    wanted += [
        photo.path
        for page in pages.pages
        for block in page.blocks
        if isinstance(block, Photos)
        for photo in block.photos
    ]
    images: dict[str, Image] = {}
    troubles = []
    for name in dict.fromkeys(wanted):
        try:
            images[name] = load_image(folder / name)
        except ImageError as error:
            troubles.append(str(error))
    return Materials(pages, images, tuple(troubles))
