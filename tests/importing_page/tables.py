"""Tables as recorders and spreadsheets write them, made for the Import page's tests."""

from __future__ import annotations

import wave
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

RATE_HZ = 2000.0


def swept(seconds: float = 6.0, seed: int = 5) -> dict[str, NDArray[np.float64]]:
    """Time, signal, reference and ground of an arm that is swept up and down, in seconds and volts."""
    rng = np.random.default_rng(seed)
    time_s = np.arange(round(seconds * RATE_HZ)) / RATE_HZ
    return {
        "time": time_s,
        "signal": 2.5 - 2.0 * np.cos(np.pi * time_s) + rng.normal(0.0, 0.003, time_s.size),
        "reference": 5.003 + rng.normal(0.0, 0.001, time_s.size),
        "ground": 0.012 + rng.normal(0.0, 0.001, time_s.size),
    }


def at_rest(seconds: float = 2.0, seed: int = 6) -> dict[str, NDArray[np.float64]]:
    """The same wires while nothing moves."""
    wires = swept(seconds, seed)
    return {**wires, "signal": np.full(wires["time"].size, 2.95)}


def comma_table(path: Path, wires: dict[str, NDArray[np.float64]], names: tuple[str, ...] = ()) -> Path:
    """Semicolons, decimal commas, milliseconds, millivolts, Latin-1, three lines of heading."""
    heads = names or ("Zeit (ms)", "Kanal A (V)", "Kanal B (V)", "Kanal C (mV)")
    columns = (1e3 * wires["time"], wires["signal"], wires["reference"], 1e3 * wires["ground"])
    lines = ["Gerät;Prüfstand Süd", "", ";".join(heads)]
    rows = zip(*columns, strict=True)
    lines += [";".join(f"{value:.4f}".replace(".", ",") for value in row) for row in rows]
    path.write_text("\r\n".join(lines) + "\r\n", encoding="latin-1")
    return path


def plain_table(path: Path, wires: dict[str, NDArray[np.float64]], heads: str) -> Path:
    """Commas and points; which wires there are follows from the number of headings."""
    columns = [wires[name] for name in ("time", "signal", "reference", "ground")][: heads.count(",") + 1]
    lines = [heads, *(",".join(f"{value:.5f}" for value in row) for row in zip(*columns, strict=True))]
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")
    return path


def wav_file(path: Path, wires: dict[str, NDArray[np.float64]], full_scale_v: float) -> Path:
    """Signal and reference as 16-bit PCM, written with the standard library."""
    counts = [np.round(wires[name] / full_scale_v * 32768).astype("<i2") for name in ("signal", "reference")]
    with wave.open(str(path), "wb") as file:
        file.setnchannels(2)
        file.setsampwidth(2)
        file.setframerate(round(RATE_HZ))
        file.writeframes(np.column_stack(counts).tobytes())
    return path
