"""Photos and logos as small pictures of our own: read with care, turned upright, without a camera's notes."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from analysis.errors import WornbandError
from analysis.wording import say

_MOST_PIXELS = 1600
_MOST_BYTES = 64 * 1024 * 1024
_JPEG_QUALITY = 85
_KINDS = ("png", "jpeg", "webp", "bmp", "gif", "tiff")
"""What a photo or a logo can be; Qt reads more, SVG among it, which can name other files."""


class ImageError(WornbandError):
    """A photo or a logo cannot be used."""


@dataclass(frozen=True, slots=True)
class Image:
    """A picture ready to be put on a page.

    Parameters
    ----------
    data : bytes
        PNG or JPEG, written anew: no place, no time, no camera in it.
    kind : str
        ``"image/png"`` or ``"image/jpeg"``.
    width, height : int
        In pixels, both at least 1.
    """

    data: bytes
    kind: str
    width: int
    height: int


def load_image(path: Path) -> Image:
    """Read a picture file.

    Parameters
    ----------
    path : Path
        Of a photo or a logo; at most 64 MB, scaled down to 1600 pixels.

    Raises
    ------
    ImageError
        Where it is missing, no picture, too large, or cannot be read.
    """
    try:
        from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize
        from PySide6.QtGui import QImageReader
    except ImportError as error:
        raise ImageError(
            say("the picture {name} needs Qt to be read", name=path.name), say("install Qt's libraries")
        ) from error

    try:
        if not path.is_file():
            raise ImageError(say("the picture {name} is not there", name=path.name), say("choose it again"))
        if path.stat().st_size > _MOST_BYTES:
            raise ImageError(
                say("the picture {name} is larger than 64 MB", name=path.name), say("choose a smaller one")
            )
    except OSError as error:
        raise ImageError(
            say("the picture {name} cannot be read", name=path.name), say("choose another one")
        ) from error
    reader = QImageReader(str(path))
    reader.setAutoTransform(True)
    if bytes(reader.format().data()).decode("ascii", "replace") not in _KINDS:  # by its content, not its name
        raise ImageError(
            say("the picture {name} cannot be read", name=path.name), say("choose a PNG or JPEG file")
        )
    size = reader.size()
    if size.isValid() and max(size.width(), size.height()) > _MOST_PIXELS:
        factor = _MOST_PIXELS / max(size.width(), size.height())
        reader.setScaledSize(
            QSize(max(1, round(size.width() * factor)), max(1, round(size.height() * factor)))
        )
    picture = reader.read()
    if picture.isNull():
        raise ImageError(
            say("the picture {name} cannot be read", name=path.name), say("choose a PNG or JPEG file")
        )
    clear = picture.hasAlphaChannel()
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    for key in picture.textKeys():
        picture.setText(key, "")
    if not picture.save(buffer, "PNG" if clear else "JPEG", -1 if clear else _JPEG_QUALITY):  # type: ignore[call-overload]
        raise ImageError(
            say("the picture {name} cannot be converted", name=path.name), say("choose another one")
        )
    kind = "image/png" if clear else "image/jpeg"
    return Image(bytes(data.data()), kind, picture.width(), picture.height())
