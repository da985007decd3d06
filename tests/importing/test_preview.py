"""A preview says how a source is understood and what has yet to be said; it agrees with the import."""

from __future__ import annotations

from collections.abc import Mapping
from pathlib import Path

import numpy as np
import pytest
from scipy.io import wavfile

from analysis.captures.model import Role, Step
from analysis.captures.reading import open_capture
from analysis.errors import Cancelled, ImportingError
from analysis.importing.behaviour import guess_step
from analysis.importing.bring_in import import_capture
from analysis.importing.choices import TextChoices
from analysis.importing.needs import Need
from analysis.importing.preview import preview
from analysis.importing.seen import TimeSource
from analysis.importing.wishes import Wishes
from tests.importing.odd_tables import ODD, Odd

RANDOM = np.random.default_rng(11)


def _table(path: Path, heading: str = "time,a,b", rows: int = 500) -> Path:
    lines = [heading]
    lines += [
        f"{n / 1000:.3f},{2.5 + 2.0 * np.sin(n / 50.0):.4f},{5.0 + 0.001 * (n % 3):.4f}" for n in range(rows)
    ]
    path.write_text("\n".join(lines) + "\n")
    return path


@pytest.mark.parametrize("odd", [item for item in ODD if item.interval_s is None], ids=lambda odd: odd.name)
def test_a_preview_says_of_every_odd_table_what_the_import_makes_of_it(odd: Odd, tmp_path: Path) -> None:
    source = tmp_path / "table.txt"
    source.write_bytes(odd.raw)
    seen = preview(source)
    import_capture([source], tmp_path / "a.h5")
    with open_capture(tmp_path / "a.h5") as opened:
        (record,) = opened.capture.records
        assert seen.time.interval_s == record.sample_interval_s
        assert seen.step.step is record.step is Step.SWEEP
        for channel in record.channels:
            (column,) = [item for item in seen.columns if item.role is channel.role]
            assert (column.low, column.high) == (channel.volts().min(), channel.volts().max())
    assert seen.ready
    assert seen.whole
    assert seen.rows == len(seen.numbers) == 6


@pytest.mark.parametrize("odd", [item for item in ODD if item.interval_s is None], ids=lambda odd: odd.name)
def test_choosing_what_was_found_out_changes_nothing(odd: Odd, tmp_path: Path) -> None:
    source = tmp_path / "table.txt"
    source.write_bytes(odd.raw)
    seen = preview(source)
    again = preview(source, Wishes(text=seen.text))
    assert again.text == seen.text
    np.testing.assert_array_equal(again.numbers, seen.numbers)
    assert [item.name for item in again.columns] == [item.name for item in seen.columns]


def test_lines_are_shown_as_they_are_beside_the_numbers_that_were_read(tmp_path: Path) -> None:
    source = tmp_path / "t.txt"
    source.write_text("bench 3\n\ntime;state;u\ns;;mV\n0,000;ok;1200,5\n0,001;ok;1300,25\n0,002;ok;1250,0\n")
    seen = preview(source)
    assert seen.head_lines == 4
    assert seen.lines[seen.head_lines] == ("0,000", "ok", "1200,5")
    assert [item.cell for item in seen.columns] == [0, 2]
    np.testing.assert_array_equal(seen.numbers[:, 1], [1200.5, 1300.25, 1250.0])
    assert seen.columns[1].factor == 1e-3
    assert seen.text == TextChoices(";", ",", "", 4, "utf-8")


def test_the_picture_of_a_column_holds_its_extremes_wherever_they_lie(tmp_path: Path) -> None:
    source = _table(tmp_path / "t.csv", rows=9000)
    text = source.read_text().splitlines()
    text[4321] = "4.320,-0.75,5.0"
    source.write_text("\n".join(text))
    column = preview(source).columns[1]
    assert len(column.minimum) == len(column.maximum) == 400
    assert column.minimum.min() == column.low == -0.75
    assert (column.minimum <= column.maximum).all()


def test_what_is_missing_or_beyond_the_range_is_counted(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    source.write_text("time,signal\n0,1\n1,inf\n2,\n3,-inf\n4,2\n5,\n6,OL\n", encoding="utf-8")
    column = preview(source).columns[1]
    assert (column.missing, column.over_range) == (2, 3)
    assert (column.low, column.high) == (1.0, 2.0)


def test_of_a_long_file_only_the_beginning_is_looked_at_and_that_is_said(tmp_path: Path) -> None:
    source = tmp_path / "t.npy"
    np.save(source, RANDOM.normal(2.5, 0.1, (900_000, 2)))
    seen = preview(source, Wishes(interval_s=1e-3), most_rows=1000)
    assert not seen.whole
    assert 1000 <= seen.rows < 900_000


def test_gaps_are_counted_and_told(tmp_path: Path) -> None:
    times = [
        *(n / 1000 for n in range(200)),
        *(5 + n / 1000 for n in range(300)),
        *(9 + n / 1000 for n in range(9)),
    ]
    source = tmp_path / "t.csv"
    source.write_text("time,signal\n" + "".join(f"{t:.3f},{1 + n % 3}\n" for n, t in enumerate(times)))
    time = preview(source).time
    assert (time.source, time.gaps, time.even) == (TimeSource.COLUMN, 2, True)
    assert time.longest_gap_s == pytest.approx(4.801)
    assert "2 gaps" in time.sentence
    assert time.rate_hz == pytest.approx(1000.0)


def test_uneven_times_need_a_word_and_with_it_they_need_none(tmp_path: Path) -> None:
    source = tmp_path / "t.csv"
    source.write_text("time [s],signal\n0,1\n1,2\n1.3,3\n2.9,2\n4,1\n")
    assert preview(source).needs(Need.RESAMPLE)
    assert preview(source, Wishes(resample=True)).ready
    assert preview(source, Wishes(interval_s=1.0)).ready


@pytest.mark.parametrize(
    ("text", "need"),
    [
        ("signal\n1.5\n2.25\n1.75\n1.0\n", Need.INTERVAL),
        ("time,time b,signal\n0,0,1\n0.1,0.3,2\n0.2,0.6,1\n", Need.TIME_COLUMN),
        ("time [s],signal\n0,1\n1,2\n2,3\n1,2\n2,1\n", Need.TIME_COLUMN),
        ("time [s],signal\n0,1\n86400,2\n172800,1\n", Need.TIME_UNIT),
        ("time [ticks],signal\n0,1\n1,2\n2,1\n", Need.TIME_UNIT),
        ("time [s],speed [km/h]\n0,1\n1,2\n2,3\n3,2\n", Need.ROLES),
        ("one,two\nthree,four\nfive,six\n", Need.TABLE),
    ],
)
def test_what_has_to_be_said_first_is_named_as_the_import_names_it(
    text: str, need: Need, tmp_path: Path
) -> None:
    source = tmp_path / "t.csv"
    source.write_text(text)
    seen = preview(source)
    assert seen.needs(need)
    assert seen.lines
    with pytest.raises(ImportingError) as caught:
        import_capture([source], tmp_path / "a.h5")
    first = next(item for item in seen.problems if item.need is need)
    assert (first.problem, first.action) == (caught.value.problem, caught.value.action)


def test_a_wav_asks_for_its_full_scale(tmp_path: Path) -> None:
    counts = RANDOM.integers(-9000, 9000, 800).astype(np.int16)
    wavfile.write(tmp_path / "a.wav", 1000, counts)
    assert preview(tmp_path / "a.wav").needs(Need.FULL_SCALE)
    seen = preview(tmp_path / "a.wav", Wishes(full_scale_v=10.0))
    assert not seen.needs(Need.FULL_SCALE)
    assert seen.columns[0].high == counts.max() * 10.0 / 2**15
    assert seen.time.source is TimeSource.IN_FILE


def test_what_was_decided_for_other_columns_is_left_aside_and_told(tmp_path: Path) -> None:
    wishes = Wishes(
        channels={"a": Role.SIGNAL, "gone": Role.GROUND}, units={"b": "parsec"}, time_column="when"
    )
    seen = preview(_table(tmp_path / "t.csv"), wishes)
    assert seen.wishes.channels == {"a": Role.SIGNAL}
    assert seen.wishes.time_column is None
    assert "gone, when" in " ".join(seen.notes)


@pytest.mark.parametrize("raw", [bytes(range(256)) * 20, b"", b"RIFF\0\0\0\0WAVEfmt "])
def test_what_cannot_be_opened_has_no_preview(raw: bytes, tmp_path: Path) -> None:
    (tmp_path / "t").write_bytes(raw)
    with pytest.raises(ImportingError):
        preview(tmp_path / "t")


def test_a_stopped_look_leaves_nothing_open(tmp_path: Path) -> None:
    def stop(done: float) -> None:
        raise Cancelled

    with pytest.raises(Cancelled):
        preview(_table(tmp_path / "t.csv"), tick=stop)


SLOW = 2.5 + 2.0 * np.sin(np.linspace(0.0, 20.0, 4000))
RESTING = 2.5 + RANDOM.normal(0.0, 0.003, 4000)
DRIVE = RESTING + 1.5 * np.exp(-((np.arange(4000) - 2000.0) ** 2) / 100.0**2)
SPIKY = RESTING + np.where(np.arange(4000) % 500 == 7, 1.4, 0.0)
STEPS: dict[str, tuple[Mapping[Role, object], Step | None, bool]] = {
    "moved": ({Role.SIGNAL: SLOW, Role.REFERENCE: RESTING + 2.5}, Step.SWEEP, True),
    "resting": ({Role.SIGNAL: RESTING}, None, False),
    "mostly resting": ({Role.SIGNAL: DRIVE}, Step.ROAD, False),
    "short spikes": ({Role.SIGNAL: SPIKY}, Step.WIGGLE, False),
    "near nought": ({Role.GROUND: RESTING - 2.5}, Step.GROUND, True),
    "near five": ({Role.REFERENCE: RESTING + 2.5}, Step.REFERENCE, True),
    "a low reference": ({Role.REFERENCE: RESTING}, None, False),
    "no signal": ({Role.GROUND: RESTING - 2.5, Role.REFERENCE: RESTING + 2.5}, None, False),
    "nothing finite": ({Role.SIGNAL: np.full(9, np.nan)}, None, False),
}


@pytest.mark.parametrize("kind", STEPS)
def test_a_step_is_guessed_from_level_and_movement_alone(kind: str) -> None:
    channels, step, sure = STEPS[kind]
    found = guess_step(channels)  # type: ignore[arg-type]
    assert (found.step, found.sure) == (step, sure)
    assert str(found.reason)


def test_only_a_sure_step_goes_into_the_capture_and_it_says_that_it_was_guessed(tmp_path: Path) -> None:
    lines = [f"{n / 1000:.3f},{volts:.5f}" for n, volts in enumerate(DRIVE)]
    (tmp_path / "drive.csv").write_text("time,signal\n" + "\n".join(lines) + "\n")
    for name, step in (("drive", None), ("sweep", Step.SWEEP)):
        source = tmp_path / f"{name}.csv"
        import_capture([source if name == "drive" else _table(source)], tmp_path / f"{name}.h5")
        with open_capture(tmp_path / f"{name}.h5") as opened:
            (record,) = opened.capture.records
            assert record.step is step
            assert ("step_guessed" in record.attributes) is (step is not None)
    import_capture([_table(tmp_path / "t.csv")], tmp_path / "said.h5", Wishes(step=Step.HOLD))
    with open_capture(tmp_path / "said.h5") as opened:
        assert opened.capture.records[0].step is Step.HOLD
        assert "step_guessed" not in opened.capture.records[0].attributes
