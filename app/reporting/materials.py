"""Everything that a report is laid out from: its pages and the pictures that they name, loaded."""

from __future__ import annotations

from collections.abc import Collection, Mapping
from dataclasses import dataclass, field
from pathlib import Path

from analysis.reports.pages import Pages, Photos
from analysis.review.named_files import allowed_path
from analysis.wording import say
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
    altered : str
        What speaks against the capture as evidence, which the report says too; empty where nothing does.
    """

    pages: Pages
    images: Mapping[str, Image] = field(default_factory=dict)
    troubles: tuple[str, ...] = ()
    altered: str = ""


def gather(pages: Pages, folder: Path, chosen: Collection[str] = ()) -> Materials:
    """Load the logo and the photos that the pages name.

    Parameters
    ----------
    pages : Pages
        Of a report.
    folder : Path
        Where relative paths begin: the capture's.
    chosen : collection of str
        Photos that the technician chose on this PC; of others, only those in the folder are opened.
    """
    photos = [
        photo.path
        for page in pages.pages
        for block in page.blocks
        if isinstance(block, Photos)
        for photo in block.photos
    ]
    images: dict[str, Image] = {}
    troubles = []
    logo = pages.workshop.logo
    for name in dict.fromkeys([logo, *photos] if logo else photos):
        try:
            # The logo stands in the settings of this PC, a photo in a review that may be a stranger's.
            path = folder / name if name == logo else allowed_path(folder, name, chosen)
            if path is None:
                raise _foreign(name)
            images[name] = load_image(path)
        except ImageError as error:
            troubles.append(error.sentence)
    return Materials(pages, images, tuple(troubles))


def _foreign(name: str) -> ImageError:
    return ImageError(
        say("the review names the picture {name}, outside the capture's folder", name=name),
        say("choose it on this PC, or put it beside the capture"),
    )
