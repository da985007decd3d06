"""Samples packed as HDF5 packs them, in chunks of ordinary deflate, but three to nine times as fast.

HDF5 packs with zlib, one chunk after the other, while it writes; that took a third of an import. ISA-L makes
streams of the same format, and about as small, which HDF5 stores as they are.
"""

from __future__ import annotations

from typing import Any, Final

import h5py
import numpy as np
from isal import isal_zlib
from numpy.typing import NDArray

from analysis.captures import layout
from analysis.errors import CaptureError
from analysis.wording import say

TRIAL_SAMPLES: Final = 32 * 1024
"""Samples at the beginning of a channel that show how it is packed best."""

_WORTH_PACKING: Final = 0.6  # share of the size above which packing costs more time than it saves space
_LEVEL: Final = 2  # of ISA-L's four: as small as level 1 of zlib (measured on counts, steps and noise)
_GZIP: Final[dict[str, Any]] = {"compression": "gzip", "compression_opts": layout.GZIP_LEVEL}
_COUNTS: Final[dict[str, Any]] = {**_GZIP, "shuffle": True}


def packing_of(raw: NDArray[Any]) -> dict[str, Any]:
    """How samples are best packed: counts with shuffle, floats whichever way their first ones pack best.

    Floats that were written with few decimals repeat as wholes and pack three times as well, and as fast,
    without shuffle; floats full of noise hardly pack at all, and are stored as they are.

    Parameters
    ----------
    raw : ndarray, shape (n_samples,)
        The first samples of a channel; may be empty.

    Returns
    -------
    dict
        Arguments of ``h5py.Group.create_dataset``.
    """
    trial = raw[:TRIAL_SAMPLES]
    if trial.dtype.kind != "f" or not trial.size:
        return _COUNTS
    plain, shuffled = (len(_deflated(trial, shuffle=shuffle)) for shuffle in (False, True))
    if min(plain, shuffled) > _WORTH_PACKING * trial.nbytes:
        return {}
    return {**_GZIP, "shuffle": shuffled < plain}


def packed_dataset(
    group: h5py.Group, name: str, size: int, dtype: np.dtype[Any], packing: dict[str, Any] | None = None
) -> h5py.Dataset:
    """An empty data set of one dimension.

    Parameters
    ----------
    group : h5py.Group
        Where.
    name : str
        How it is called.
    size : int
        Samples.
    dtype : dtype
        Of integers or floats of up to 8 bytes.
    packing : dict, optional
        As `packing_of` gives it; as for counts without it.

    Raises
    ------
    CaptureError
        Where a capture cannot hold samples of that type.
    """
    if dtype.kind not in "iuf" or dtype.itemsize > 8:
        raise CaptureError(
            say("{name} holds {dtype}, which a capture cannot store", name=name, dtype=str(dtype)),
            say("use integers or floats"),
        )
    dataset: h5py.Dataset = group.create_dataset(
        name,
        shape=(size,),
        dtype=dtype,
        chunks=(min(max(size, 1), layout.CHUNK_SAMPLES),),
        **(_COUNTS if packing is None else packing),
    )
    return dataset


def write_chunk(dataset: h5py.Dataset, start: int, raw: NDArray[Any]) -> None:
    """Store a chunk of samples, packed as its data set says.

    Parameters
    ----------
    dataset : h5py.Dataset
        As `packed_dataset` made it.
    start : int
        Where the chunk begins.
    raw : ndarray, shape (n_chunk,)
        Samples of one chunk; the last one may be shorter.
    """
    if dataset.compression is None:
        dataset[start : start + len(raw)] = raw
        return
    whole = np.zeros(dataset.chunks, dtype=dataset.dtype)
    whole[: len(raw)] = raw
    dataset.id.write_direct_chunk((start,), _deflated(whole, shuffle=dataset.shuffle))


def _deflated(samples: NDArray[Any], *, shuffle: bool) -> bytes:
    """Samples through HDF5's filters: the first bytes of all samples, then their second ones; and deflate."""
    data = np.ascontiguousarray(samples).view(np.uint8)
    if shuffle:
        data = np.ascontiguousarray(data.reshape(-1, samples.itemsize).T)
    packed: bytes = isal_zlib.compress(data, _LEVEL)
    return packed
