"""The files that are damaged: small, whole, and of every kind that the program reads."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import replace
from pathlib import Path

import h5py
import numpy as np
import pyarrow as pa
from pyarrow import feather, parquet
from PySide6.QtGui import QImage
from scipy import io

from analysis.captures.memory import make_channel, make_record
from analysis.captures.model import Record, Role
from analysis.captures.reading import open_capture
from analysis.captures.writing import write_capture
from analysis.diagnosis.profiles import built_in_ids, built_in_text
from analysis.intervals import Interval
from analysis.reports.workshop import Workshop
from analysis.review.job import Job, Photo
from analysis.review.model import Choice, Decision, PointMarker, Review, SpanMarker, TravelSpan
from analysis.review.stored import review_text
from app.reporting.making import Wanted, make_report
from app.resources import sample_captures
from app.settings import Settings
from app.settings_file import SettingsFile
from tests.captures.examples import small_capture, write_plain


def _copied(source: h5py.Group, target: h5py.Group) -> None:
    """What a file holds written again, so that another layout is used throughout."""
    for key, value in source.attrs.items():
        if key not in ("DIMENSION_LIST", "REFERENCE_LIST", "CLASS", "NAME"):
            target.attrs.create(key, value, dtype=source.attrs.get_id(key).dtype)
    for name, item in source.items():
        if isinstance(item, h5py.Group):
            _copied(item, target.create_group(name))
        else:
            made = target.create_dataset(
                name, data=item[()], chunks=item.chunks, compression=item.compression
            )
            for key, value in item.attrs.items():
                if key not in ("DIMENSION_LIST", "REFERENCE_LIST", "CLASS", "NAME"):
                    made.attrs.create(key, value, dtype=item.attrs.get_id(key).dtype)


def oldest(path: Path) -> Path:
    """A capture of ours as it is written: superblock 0, symbol tables, B-trees of version 1."""
    write_capture(small_capture(100), path)
    return path


def newest(path: Path) -> Path:
    """The same in the newest layout: superblock 3, compact or dense links, checksums."""
    whole = oldest(path.with_suffix(".old"))
    with h5py.File(whole) as source, h5py.File(path, "w", libver="latest") as target:
        _copied(source, target)
    whole.unlink()
    return path


def foreign(path: Path) -> Path:
    """A capture as plain h5py writes it, with texts of variable length."""
    return write_plain(path)


def review(path: Path) -> Path:
    """A review with every kind of marker and decision, and a job."""
    whole = Review(
        capture_id="1b671a64-40d5-491e-99b0-da01ff1f3341",
        markers=(
            PointMarker("a", "001", 0.25, "drops", "here"),
            SpanMarker("b", "002", Interval(0.1, 0.5), "rest", ""),
            TravelSpan("c", Role.SIGNAL, Interval(40.0, 45.0), "Stelle µ", "seen twice"),
        ),
        decisions=(
            Decision(
                Role.SIGNAL, Interval(40.0, 45.0), 0.97, "1", Choice.ADJUSTED, Interval(41.0, 44.0), "x"
            ),
            Decision(Role.SIGNAL, Interval(60.0, 61.0), 0.4, "1", Choice.DISMISSED, None, "dirt"),
        ),
        job=Job(
            {"vehicle": "Larkspur 3"},
            {"title": "x"},
            "note",
            ("trace",),
            (Photo("a.png", "plug"),),
            {"part": "1"},
        ),
    )
    path.write_text(review_text(whole), encoding="utf-8")
    return path


def recipes(folder: Path) -> list[Path]:
    """A recipe with everything that one can hold."""
    held = {
        "schema": "wornband-recipe/1",
        "kept": "2026-01-02T03:04:05+00:00",
        "shape": {"kind": "text", "columns": ["t", "U"], "units": ["s", "V"], "delimiter": ";"},
        "time_column": "t",
        "sample_interval_s": 0.001,
        "channels": {"U": "signal"},
        "units": {"U": "mV"},
        "factors": {"U": 2.0},
        "full_scale_v": 5.0,
        "step": "sweep",
        "resample": True,
        "text": {"delimiter": ";", "decimal": ",", "thousands": ".", "head_lines": 2, "encoding": "cp1252"},
        "probe_points": {"U": "sensor end"},
        "return_points": {"U": "sensor ground"},
        "conditions": {},
        "attributes": {"vehicle": "Larkspur 3"},
    }
    path = folder / "a.json"
    path.write_text(json.dumps(held), encoding="utf-8")
    return [path]


def settings(folder: Path) -> list[Path]:
    """Settings with everything that they can hold."""
    path = folder / "settings.json"
    made = Settings(SettingsFile(path))
    made.workshop = Workshop("Invented Garage", ("Some Street 1", "Some Town"), "logo.png")
    made.remember_capture(Path("a.h5"))
    made.known_good = {"sensor": "a.h5"}
    made.paper, made.language, made.colours, made.lanes = "letter", "de", "dark", False
    made.choose_files(Path("job").absolute(), ["a.png"])
    return [path]


def photos(folder: Path) -> list[Path]:
    """A small picture in every form that a camera or a scanner writes."""
    picture = QImage(48, 32, QImage.Format.Format_RGB32)
    picture.fill(0x2244AA)
    found = [folder / f"a.{ending}" for ending in ("png", "jpg", "bmp")]
    for path in found:
        if not picture.save(str(path)):
            raise RuntimeError(f"Qt cannot write {path.suffix}")
    return found


def reports(folder: Path) -> list[Path]:
    """A report as HTML and as PDF."""
    capture = folder.parent / "subject.h5"
    write_capture(small_capture(3000), capture, replace=True)
    found = [folder / "a.html", folder / "a.pdf"]
    for path in found:
        make_report(str(capture), path, Wanted(today="2026-01-01"))
    return found


def profiles(folder: Path) -> Iterator[Path]:
    """Every built-in profile under an id of its own."""
    for name in built_in_ids():
        path = folder / f"{name}.toml"
        text = built_in_text(name).replace(f'id = "{name}"', f'id = "own-{name}"')
        path.write_text(text, encoding="utf-8")
        yield path


def visits(folder: Path, every: int = 5) -> list[Path]:
    """Two samples with every fifth of their values: whole visits that are examined quickly."""
    names = ("W1041-rear-left-height.h5", "W1041-rear-left-height-new-sensor.h5")
    samples = {path.name: path for path in sample_captures()}
    for name in names:
        with open_capture(samples[name]) as opened:
            records = [_thinned(item, every) for item in opened.capture.records]
            write_capture(replace(opened.capture, records=tuple(records)), folder / name)
    return [folder / name for name in names]


def _thinned(record: Record, every: int) -> Record:
    channels = []
    for item in record.channels:
        values = item.source.read(0, len(item))[::every]
        channels.append(make_channel(item.role, values, item.scaling, attributes=item.attributes))
    interval_s = record.sample_interval_s * every
    return make_record(record.name, interval_s, channels, step=record.step, attributes=record.attributes)


def tables(folder: Path) -> list[Path]:
    """Small tables as other programs write them: point or comma, a unit row, and numpy's own files."""
    time_s = np.arange(200) * 1e-3
    signal_v = 2.5 + np.sin(time_s * 30.0)
    plain = "Time,Signal,Ground\n(s),(V),(mV)\n" + "".join(
        f"{at:.4f},{value:.4f},{3.0:.1f}\n" for at, value in zip(time_s, signal_v, strict=True)
    )
    comma = plain.replace(",", ";").replace(".", ",").replace("(s)", "[s]")
    made = [folder / "plain.csv", folder / "comma.txt", folder / "numpy.npy", folder / "numpy.npz"]
    made[0].write_text(plain, encoding="utf-8")
    made[1].write_text(comma, encoding="latin-1")
    np.save(made[2], signal_v)
    np.savez(made[3], time=time_s, signal=signal_v)
    made += [folder / "matrix.mat", folder / "columns.parquet", folder / "columns.feather"]
    io.savemat(made[4], {"time": time_s, "signal": signal_v})
    columns = pa.table({"time": time_s, "signal": signal_v})
    parquet.write_table(columns, made[5])
    feather.write_feather(columns, str(made[6]))
    return made
