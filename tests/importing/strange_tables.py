# ruff: noqa: E501 - a table is easier to see as it is
"""Tables that nobody has seen before, written by hand in invented layouts, each with what it must become.

All hold the same twelve samples, a millisecond apart: a signal that goes up and down and, where there is room, a
reference near 5 V. A table that cannot be understood by itself says what has to be chosen, and is right with it.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field

import numpy as np
from numpy.typing import NDArray

from analysis.captures.model import Role
from analysis.importing.wishes import Wishes

SIGNAL_V = (0.5, 1.25, 2.0, 2.75, 3.5, 4.25, 4.5, 3.75, 3.0, 2.25, 1.5, 0.75)
REFERENCE_V = (5.001, 5.002, 4.999, 5.0, 5.001, 4.998, 5.0, 5.002, 5.001, 4.999, 5.003, 5.0)
ROWS = tuple((n, n / 1000, s, r) for n, (s, r) in enumerate(zip(SIGNAL_V, REFERENCE_V, strict=True)))


@dataclass(frozen=True)
class Strange:
    """A table and what it must become.

    `says` is what is asked for where it cannot be understood; `wishes` answers it. `signal` and `reference` are
    given where a cell is missing or over range, `others` where there are more channels. Each of its `records` reads
    the same.
    """

    name: str
    raw: bytes
    says: str = ""
    wishes: Wishes = field(default_factory=Wishes)
    signal: tuple[float, ...] | None = SIGNAL_V
    reference: tuple[float, ...] | None = REFERENCE_V
    interval_s: float = 1e-3
    others: Mapping[Role, tuple[float, ...]] = field(default_factory=dict)
    records: int = 1

    @property
    def expected(self) -> Mapping[Role, NDArray[np.float64]]:
        said = {Role.SIGNAL: self.signal, Role.REFERENCE: self.reference, **self.others}
        return {role: np.array(volts) for role, volts in said.items() if volts is not None}


def rows_as(form: str, end: str = "\n") -> str:
    """A line a sample; n counts, t is seconds, m milliseconds, s and r volts, sm and rm millivolts."""
    return "".join(
        form.format(n=n, t=t, m=n, s=s, r=r, sm=s * 1000, rm=r * 1000) + end for n, t, s, r in ROWS
    )


def comma(text: str) -> str:
    return text.replace(".", ",")


def with_cells(values: tuple[float, ...], **changed: float) -> tuple[float, ...]:
    """The values with some of them changed: row7=... stands for the eighth."""
    return tuple(changed.get(f"row{place}", value) for place, value in enumerate(values))


_LINES = rows_as("{t:.3f},{s},{r}").splitlines()
_NAN, _INF = float("nan"), float("inf")

FIRST = (
    Strange("twelve lines of talk above", (
        "Bench record\nNo: 117\nDate: 2026-03-04\nOperator: R. Vale\nCar: Larkspur 3\nOdometer: 88,120\nBox: 2\nSlot: 4\n"
        "Remark: arm moved by hand, slowly\nLength: 12\n\nElapsed\tSensor\tFeed\n" + rows_as("{t:.3f}\t{s}\t{r}")).encode()),
    Strange("milliseconds and a Latin-1 heading", (
        "Prüfstand 4; Gerät 7\r\nZeit [ms];Höhengeber [V];Versorgung Sensor [V]\r\n" + comma(rows_as("{m:.1f};{s:.3f};{r:.3f}", "\r\n"))).encode("latin-1")),
    Strange("UTF-16 the other way round", (
        "\ufeffZeit\tSignal\tReferenz\r\n" + comma(rows_as("{t:.4f}\t{s:.3f}\t{r:.3f}", "\r\n"))).encode("utf-16-be")),
    Strange("remarks between the rows", (
        "# started\ntime,signal,ref\n" + "\n".join([*_LINES[:4], "# arm at the top", *_LINES[4:9], "# and back", *_LINES[9:]]) + "\n").encode()),
    Strange("time of day beside a word", (
        "clock;state;pedal;vref\n" + "".join(f"09:14:07.{500 + n:03d};{'up' if n < 6 else 'down'};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("date and time in two columns", (
        "Datum;Uhrzeit;Signal;Referenz\n" + "".join(f"04.03.2026;09:14:07,{500 + n:03d};{s};{r}\n".replace(".", ",").replace("04,03,2026", "04.03.2026") for n, _, s, r in ROWS)).encode()),
    Strange("a dotted date with the time", (
        "Zeitpunkt;Signal;Referenz\n" + "".join(f"04.03.2026 09:14:07,{500 + n:03d};" + comma(f"{s};{r}\n") for n, _, s, r in ROWS)).encode()),
    Strange("month first and afternoon", (
        "Date Time,Signal,Reference\n" + "".join(f"3/4/2026 2:14:07.{500 + n:03d} PM,{s},{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("a counter of 16 bit that starts again", (
        "ticks [ms],signal,ref\n" + "".join(f"{(65530 + n) % 65536},{s},{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("over midnight", (
        "time;signal;ref\n" + "".join(f"{'23:59:59' if n < 5 else '00:00:00'}.{(995 + n) % 1000:03d};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("two tables side by side", (
        "time;signal;;time;reference\n" + rows_as("{t:.3f};{s};;{t:.3f};{r}")).encode()),
    Strange("fixed width with blanks", (
        "    TIME    SIGNAL       REF\n" + "".join(f"{t:8.3f}{'' if n == 7 else f'{s:.3f}':>10}{r:10.3f}\n" for n, t, s, r in ROWS)).encode(),
        signal=with_cells(SIGNAL_V, row7=_NAN)),
    Strange("a comma inside quotes", (
        'no,remark,time,signal,ref\n' + "".join(f'{n + 1},"up, then down",{t:.3f},{s},{r}\n' for n, t, s, r in ROWS)).encode()),
    Strange("dots for thousands", (
        "Zeit (µs);Signal (mV);Referenz (mV)\n" + "".join(f"{n * 1000:,};{s * 1000:,.1f};{r * 1000:,.1f}\n".replace(",", "x").replace(".", ",").replace("x", ".") for n, _, s, r in ROWS)).encode()),
    Strange("beyond the range", (
        "time,signal,ref\n" + "".join(f"{t:.3f},{ {3: '∞', 5: '-∞', 8: 'OL'}.get(n, s)},{r}\n" for n, t, s, r in ROWS)).encode(),
        signal=with_cells(SIGNAL_V, row3=_INF, row5=-_INF, row8=_INF)),
    Strange("blank cells and blank lines", (
        "time,signal,ref\n\n" + "".join(f"{t:.3f},{'' if n in (2, 9) else s},{'' if n == 4 else r}\n" + ("\n" if n % 4 == 3 else "") for n, t, s, r in ROWS)).encode(),
        signal=with_cells(SIGNAL_V, row2=_NAN, row9=_NAN), reference=with_cells(REFERENCE_V, row4=_NAN)),
    Strange("a last line that is cut", ("time,signal,ref\n" + rows_as("{t:.3f},{s},{r}")[:-6]).encode(),
        signal=with_cells(SIGNAL_V, row11=_NAN), reference=with_cells(REFERENCE_V, row11=_NAN)),
    Strange("headings of two lines in one cell", (
        '"time\n[s]";"signal\n[V]";"reference\n[V]"\n' + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("a table drawn with bars", (
        "| time | signal | ref |\n|------|--------|-----|\n" + rows_as("| {t:.3f} | {s} | {r} |")).encode()),
    Strange("decimal commas between commas", ("time, signal, ref\n" + "".join(comma(f"{t:.3f}") + ", " + comma(f"{s:.3f}") + ", " + comma(f"{r:.3f}") + "\n" for _, t, s, r in ROWS)).encode()),
    Strange("headings again on every page", (
        "".join(("Page\ntime;signal;ref\ns;V;V\n" if n % 5 == 0 else "") + f"{t:.3f};{s};{r}\n" for n, t, s, r in ROWS)).encode()),
    Strange("one line a channel and moment", (
        "time;channel;value\n" + rows_as("{t:.3f};signal;{s}\n{t:.3f};reference;{r}")).encode(),
        says="more than one channel"),
    Strange("lying on its side", (
        "time;" + ";".join(f"{t:.3f}" for _, t, _, _ in ROWS) + "\nsignal;" + ";".join(f"{s}" for s in SIGNAL_V)
        + "\nreference;" + ";".join(f"{r}" for r in REFERENCE_V) + "\n").encode()),
    Strange("counts of a converter", ("time [s],a [counts],b [counts]\n" + rows_as("{t:.3f},{sm:.0f},{rm:.0f}")).encode(),
        says="--factor a=VOLTS --factor b=VOLTS", wishes=Wishes(factors={"a": 1e-3, "b": 1e-3})),
    Strange("a line that names the delimiter", ("sep=;\ntime;signal;ref\n" + rows_as("{t:.3f};{s};{r}")).encode()),
)  # fmt: skip

SECOND = (
    Strange("milliseconds since 1970", ("timestamp,signal,ref\n" + "".join(f"{1772615647500 + n},{s},{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("minutes", ("t [min];signal;ref\n" + "".join(f"{n / 60000:.12f};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("narrow spaces for thousands", ("t [µs];sig [mV];ref [mV]\n" + "".join(
        f"{n * 1000:,};{s * 1000:,.1f};{r * 1000:,.1f}\n".replace(",", "\u202f").replace(".", ",") for n, _, s, r in ROWS)).encode()),
    Strange("each cell with a unit of its own", ("time;signal;ref\n" + "".join(
        f"{n} ms;{f'{s * 1000:.0f} mV' if s < 1 else f'{s} V'};{r} V\n" for n, _, s, r in ROWS)).encode()),
    Strange("the rate in a remark", ("% box 3, Fs = 1 kHz, 12 samples\n% signal ref\n" + rows_as("{s} {r}")).encode()),
    Strange("channels listed above", (
        "Channel 1: signal [V]\nChannel 2: reference [V]\nSampling interval: 1 ms\n---\n" + rows_as("{s}\t{r}")).encode()),
    Strange("thousands inside quotes", ('"t, us","signal, mV","ref, mV"\n' + "".join(
        f'"{n * 1000:,}","{s * 1000:,.1f}","{r * 1000:,.1f}"\n' for n, _, s, r in ROWS)).encode()),
    Strange("a clock of whole seconds", ("time;signal;ref\n" + rows_as("09:14:07;{s};{r}")).encode(),
        says="name the sample interval", wishes=Wishes(interval_s=1e-3)),
    Strange("the newest row first", ("time;signal;ref\n" + "".join(f"{t:.3f};{s};{r}\n" for _, t, s, r in reversed(ROWS))).encode()),
    Strange("a summary below", ("time;signal;ref\n" + rows_as("{t:.3f};{s};{r}") + "\nmin;0.5;4.998\nmax;4.5;5.003\n").encode()),
    Strange("the means under the heading", ("time;signal;ref\nmean;2.5;5.0\ns;V;V\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("single quotes", ("'time';'signal';'ref'\n" + rows_as("'{t:.3f}';'{s}';'{r}'")).encode()),
    Strange("room left at the end", ("time,signal,ref\r\n" + rows_as("{t:.3f},{s},{r}", "\r\n")).encode() + b"\x1a" + b"\0" * 4096),
    Strange("keys and values with commas above", (
        "Aufnahme;7\nAbtastintervall;0,001;s\nKanal;1;2\n\nSignal;Referenz\n" + comma(rows_as("{s};{r}"))).encode()),
    Strange("days of a spreadsheet", ("Date;signal;ref\n" + "".join(f"{46085.384826 + n / 86400000:.12f};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("minutes and seconds", ("t;signal;ref\n" + rows_as("0:{t:06.3f};{s};{r}")).encode()),
    Strange("numbers for names", ("time;1;2\n" + rows_as("{t:.3f};{s};{r}")).encode()),
)  # fmt: skip

_JSON = "[" + ",\n ".join(f"[{t:.3f}, {s}, {r}]" for _, t, s, r in ROWS) + "]\n"
_HTML = "<table>\n" + rows_as("<tr><td>{t:.3f}</td><td>{s}</td><td>{r}</td></tr>") + "</table>\n"

THIRD = (
    Strange("names, descriptions and units in three lines", (
        "Zeit\tU1\tU2\nLaufzeit\tHöhengeber\tSensorversorgung\ns\tmV\tmV\n"
        + "".join(f"{t:.3f}\t{s * 1000:,.2f}\t{r * 1000:,.2f}\n".replace(",", "x").replace(".", ",").replace("x", ".") for _, t, s, r in ROWS)).encode()),
    Strange("three columns of one name", ("U;U;U\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("a delimiter before the first cell", (";time;signal;ref\n" + rows_as(";{t:.3f};{s};{r}")).encode()),
    Strange("a unit after every number", ("time signal ref\n" + rows_as("{t:.3f} s {s} V {r} V")).encode()),
    Strange("lists in brackets", _JSON.encode(), says="not a table"),
    Strange("a web page", _HTML.encode(), says="not a table"),
    Strange("exponents with a D", ("  time signal ref\n" + "".join(f"  {t:.4E}  {s:.4E}  {r:.4E}\n".replace("E", "D") for _, t, s, r in ROWS)).encode()),
    Strange("prefixes without a unit", ("time;signal;ref\n" + "".join(
        f"{n}m;{f'{s * 1000:.0f}m' if s < 1 else s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("dates and times without marks", ("date;time;signal;ref\n" + "".join(f"20260304;091407.{500 + n:03d};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("headings over two cells", ("Time;;Signal;;Reference;\n" + rows_as("{t:.3f};;{s};;{r};")).encode()),
    Strange("a remark behind some rows", ("time;signal;ref\n" + "".join(f"{t:.3f};{s};{r}{'  # arm at the top' if n == 6 else ''}\n" for n, t, s, r in ROWS)).encode(),
        reference=with_cells(REFERENCE_V, row6=_NAN)),
    Strange("semicolons before remarks", ("; bench 4, arm by hand\n; 2026-03-04\ntime\tsignal\tref\n" + rows_as("{t:.3f}\t{s}\t{r}")).encode()),
    Strange("plus signs for what is beyond the range", ("time,signal,ref\n" + "".join(f"{t:.3f},{'++++' if n == 6 else s},{r}\n" for n, t, s, r in ROWS)).encode(),
        signal=with_cells(SIGNAL_V, row6=_NAN)),
    Strange("line ends the other way round", ("time;signal;ref\n\r" + rows_as("{t:.3f};{s};{r}", "\n\r")).encode()),
    Strange("a heading longer than the rows", ("time;signal;ref;remark\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("spans of days", ("elapsed,signal,ref\n" + rows_as("0 days 00:00:00.{m:03d}000,{s},{r}")).encode()),
    Strange("the time last", ("signal;ref;time\n" + rows_as("{s};{r};{t:.3f}")).encode()),
    Strange("hours", ("t [h];signal;ref\n" + "".join(f"{n / 3.6e6:.14f};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
)  # fmt: skip

_SEGMENTS = "".join(
    f"Segment {k}\ntime;signal;ref\n" + "".join(f"{t:.3f};{s};{r}\n" for _, t, s, r in ROWS[:6])
    for k in (1, 2)
)

FOURTH = (
    Strange("times before the trigger", ("time;signal;ref\n" + "".join(f"{t - 0.005:.3f};{s};{r}\n" for _, t, s, r in ROWS)).encode()),
    Strange("spaces inside quotes", ('"time " ; "signal " ; "ref "\n' + rows_as('"{t:.3f} " ; "{s} " ; "{r} "')).encode()),
    Strange("two lines of units", ("time;signal;ref\ns;V;V\n(rel);(raw);(raw)\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("rows that grow longer", ("time;signal;ref\n" + "".join(f"{t:.3f};{s};{r}{';12.6' if n > 8 else ''}\n" for n, t, s, r in ROWS)).encode()),
    Strange("a micro sign that was read wrongly once", ("t [\u00c2\u00b5s];signal;ref\n" + "".join(f"{n * 1000};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("a micro sign that was lost", ("t (?s);signal;ref\n" + "".join(f"{n * 1000};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("seconds cut short", ("Zeit in Sek.;Signal;Ref\n" + comma(rows_as("{t:.3f};{s};{r}"))).encode()),
    Strange("volts written out", ("Clock;Wiper;Feed\nmsec;mVolt;mVolt\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("no heading over the time", (";signal;ref\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("one comma for everything", ("time,signal,ref\n" + "".join(",".join(comma(f"{v:.3f}") for v in (t, s, r)) + "\n" for _, t, s, r in ROWS)).encode(),
        says="between cells and inside numbers"),
    Strange("numbers that touch", ("TIME     SIGNAL      REF\n" + rows_as("{t:.6f}-{s:.6f}-{r:.6f}")).encode(), says="no two rows"),
    Strange("a year of two digits", ("Datum/Zeit;Signal;Ref\n" + "".join(f"04.03.26 09:14:07,{500 + n:03d};" + comma(f"{s};{r}\n") for n, _, s, r in ROWS)).encode()),
    Strange("two records in one file", _SEGMENTS.encode(), records=2, signal=SIGNAL_V[:6], reference=REFERENCE_V[:6]),
    Strange("times rounded to more than a row", ("time;signal;ref\n" + rows_as("{t:.1f};{s};{r}")).encode(),
        says="name the sample interval", wishes=Wishes(interval_s=1e-3)),
    Strange("times in a unit of nobody", ("time [ticks];signal;ref\n" + rows_as("{m};{s};{r}")).encode(),
        says="--unit COLUMN=UNIT", wishes=Wishes(units={"1": "ms"})),
    Strange("words beside every number", ("time;signal;ref;state\n" + rows_as("{t:.3f};{s};{r};0x1F OK")).encode()),
)  # fmt: skip

_MILLI = rows_as("{m}\t{sm:.0f}\t{rm:.0f}")

FIFTH = (
    Strange("keys above, a delimiter behind every row", (
        "Box,3\nSlot,left\nPoints,12\n\nTime,CH1,CH2,\ns,V,V,\n" + rows_as("{t:.3f},{s},{r},")).encode()),
    Strange("increment and origin above", (
        "X increment;1.000E-03\nX origin;-5.000E-03\nCH1;CH2\n" + rows_as("{s};{r}")).encode()),
    Strange("thousands of samples a second", ("Sample Rate: 1 kSa/s\nPoint,A,B\n" + rows_as("{n},{s},{r}")).encode()),
    Strange("a rate with German marks", ("Abtastrate = 1.000,0 Hz\nSignal;Referenz\n" + comma(rows_as("{s};{r}"))).encode()),
    Strange("nothing about the time", ("Record length: 12\nTime base: 200 us per part\nno;signal;ref\n" + rows_as("{n};{s};{r}")).encode(),
        says="--sample-interval SECONDS", wishes=Wishes(interval_s=1e-3)),
    Strange("units after a blank line", ("Time;Signal;Ref\n\nms;mV;mV\n\n" + _MILLI.replace("\t", ";")).encode()),
    Strange("names with spaces between spaces", ("Time (ms)   Signal A (mV)   Ref B (mV)\n" + rows_as("  {m:7.1f}   {sm:13.1f}   {rm:10.1f}")).encode()),
    Strange("a heading between other marks", ("t [ms], sig [mV], ref [mV]\n" + _MILLI).encode()),
    Strange("columns listed one by one", ("Column 1: Elapsed [ms]\nColumn 2: Wiper [mV]\nColumn 3: Feed [mV]\n\n" + _MILLI).encode()),
    Strange("kinds of numbers below the units", ("time\tsignal\tref\nms\tmV\tmV\nint\tfloat\tfloat\n" + _MILLI).encode()),
    Strange("a point in the times and commas in the volts", ("time;signal;ref\n" + "".join(f"{t:.3f};" + comma(f"{s};{r}\n") for _, t, s, r in ROWS)).encode()),
    Strange("a letter before every line", ("H;time;signal;ref\nU;ms;mV;mV\n" + rows_as("D;{m};{sm:.0f};{rm:.0f}") + "E;12\n").encode()),
    Strange("a comma and a tab", ("time,\tsignal,\tref\n" + rows_as("{t:.3f},\t{s},\t{r}")).encode()),
    Strange("milliseconds in a column of their own", ("Zeit;ms;Signal;Ref\n" + "".join(f"09:14:07;{500 + n};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("how the time is written, as its unit", ("Time;Signal;Ref\nHH:MM:SS.sss;V;V\n" + rows_as("00:00:{t:06.3f};{s};{r}")).encode()),
)  # fmt: skip

SIXTH = (
    Strange("a title, a date and a heading of capitals", (
        "RIDE HEIGHT TEST\nRECORDED;04.03.2026 09:14\n\nTIME [S];SENSOR OUT [V];SENSOR FEED [V]\n" + comma(rows_as("{t:.3f};{s:.2f};{r:.3f}"))).encode()),
    Strange("one wire after the other, with its number", ("Nr.;Zeit/ms;Kanal 1/V;Kanal 2/V\n" + rows_as("{n};{m};{s};{r}")).encode()),
    Strange("a unit in words below", ("Time,Signal,Reference\nmilliseconds,volts,volts\n" + rows_as("{m},{s},{r}")).encode()),
    Strange("a blank cell over the numbers of the rows", (",Time (s),A (V),B (V)\n" + rows_as("{n},{t:.3f},{s},{r}")).encode()),
    Strange("minutes and seconds with a comma", ("Zeit\tSignal\tRef\n" + "".join(comma(f"00:{t:06.3f}\t{s:.3f}\t{r:.3f}\n") for _, t, s, r in ROWS)).encode()),
    Strange("a time with its date and zone", ("timestamp,signal,ref\n" + "".join(f"2026-03-04T09:14:07.{500 + n:03d}Z,{s},{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("voltages of a battery too", ("t/s;U_sig/V;U_ref/V;U_bat/V\n" + rows_as("{t:.3f};{s};{r};12.61")).encode(),
        others={Role.SUPPLY: (12.61,) * 12}),
    Strange("two signals", ("time;pedal 1;pedal 2;5V\n" + "".join(f"{t:.3f};{s};{s / 2};{r}\n" for _, t, s, r in ROWS)).encode(),
        others={Role.SECOND_SIGNAL: tuple(volts / 2 for volts in SIGNAL_V)}),
    Strange("a temperature beside them", ("time [s];T [°C];signal [V];reference [V]\n" + rows_as("{t:.3f};23.5;{s};{r}")).encode("latin-1")),
    Strange("microvolts and nanoseconds", ("t(ns),sig(uV),ref(uV)\n" + "".join(f"{n * 1000000},{s * 1e6:.0f},{r * 1e6:.0f}\n" for n, _, s, r in ROWS)).encode()),
    Strange("settings above, each in quotes", ('"Interval","1","ms"\n"Channels","2"\n"","",""\n"Signal","Reference",""\n' + rows_as('"{s}","{r}",""')).encode()),
    Strange("an empty column at the beginning", (";Time;Signal;Ref\n;s;V;V\n" + rows_as(";{t:.3f};{s};{r}")).encode()),
    Strange("a row of dashes below the heading", ("  time   signal    ref\n ------ -------- ------\n" + rows_as(" {t:6.3f} {s:8.3f} {r:6.3f}")).encode()),
    Strange("values that fill the cell with noughts", ("TIME;SIGNAL;REF\n" + rows_as("{t:010.6f};{s:+010.6f};{r:+010.6f}")).encode()),
    Strange("a name for each side", ("time;signal left;reference left\n" + rows_as("{t:.3f};{s};{r}")).encode()),
    Strange("a frequency in the heading of the counter", ("sample (1 kHz);signal;ref\n" + rows_as("{n};{s};{r}")).encode(),
        says="--sample-rate HERTZ", wishes=Wishes(interval_s=1e-3)),
)  # fmt: skip

GROUND_V = (0.012, 0.011, 0.013, 0.012, 0.012, 0.011, 0.012, 0.013, 0.012, 0.012, 0.011, 0.012)
_GROUND = {Role.GROUND: GROUND_V}

SEVENTH = (
    Strange("row names that the heading leaves out", ('"time" "signal" "ref"\n' + "".join(f'"{n + 1}" {t:.3f} {s} {r}\n' for n, t, s, r in ROWS)).encode()),
    Strange("row numbers that the heading leaves out", ("time,signal,ref\n" + rows_as("{n},{t:.3f},{s},{r}")).encode()),
    Strange("an arrow behind the clock", "".join(f"09:14:07.{500 + n:03d} -> {s},{r}\n" for n, _, s, r in ROWS).encode()),
    Strange("a table out of a database", (
        "  time  | signal |  ref  \n--------+--------+-------\n" + rows_as("  {t:.3f} | {s:6.3f} | {r:.3f}") + "(12 rows)\n\n").encode()),
    Strange("French", ("Temps (s);Capteur (V);Référence (V)\n" + comma(rows_as("{t:.3f};{s:.2f};{r:.3f}"))).encode("latin-1")),
    Strange("Spanish", ("Tiempo [ms];Sensor [V];Alimentación [V]\n" + comma(rows_as("{m};{s:.2f};{r:.3f}"))).encode()),
    Strange("a month in letters", ("Date;Signal;Ref\n" + "".join(f"04-Mar-2026 09:14:07.{500 + n:03d};{s};{r}\n" for n, _, s, r in ROWS)).encode()),
    Strange("a line of a log", rows_as("[{t:.3f}] signal={s} ref={r}").encode(), says="no two rows"),
    Strange("commas and units in the cells", ("Zeit;Signal;Ref\n" + comma(rows_as("{t:.3f} s;{s:.3f} V;{r:.3f} V"))).encode()),
    Strange("units that touch", ("t;a;b\n" + rows_as("{t:.3f}s;{s}V;{r}V")).encode()),
    Strange("the reference first, names of inputs", ("t (s),A0 (V),A1 (V)\n" + rows_as("{t:.3f},{r},{s}")).encode()),
    Strange("per cent beside volts", ("t [s];position [%];voltage [V];5 V [V]\n" + rows_as("{t:.3f};{n};{s};{r}")).encode()),
    Strange("a speed beside the height", ("t [s];speed [km/h];height [V];ref [V]\n" + rows_as("{t:.3f};52.3;{s};{r}")).encode()),
    Strange("millivolts that nobody says", ("time;signal;ref;gnd\n" + "".join(
        f"{t:.3f};{s * 1000:.0f};{r * 1000:.0f};{g * 1000:.0f}\n" for (_, t, s, r), g in zip(ROWS, GROUND_V, strict=True))).encode(), others=_GROUND),
    Strange("three wires and a heading of numbers", ("1;2;3;4\n" + "".join(
        f"{t:.3f};{s};{r};{g}\n" for (_, t, s, r), g in zip(ROWS, GROUND_V, strict=True))).encode(), others=_GROUND),
    Strange("times as fractions of a second behind a whole one", ("sec;frac;signal;ref\n" + "".join(f"17;{t:.3f};{s};{r}\n" for _, t, s, r in ROWS)).encode(),
        says="--time COLUMN|name the sample interval", wishes=Wishes(time_column="frac")),
)  # fmt: skip
