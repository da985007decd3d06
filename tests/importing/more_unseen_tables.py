# ruff: noqa: E501 - a table is easier to see as it is
"""Tables as a stranger writes them, another seventy.

Written by hand, by who had mended the parser for the first ninety-nine, in invented layouts; the twelve samples are those of the other tables.
Record of the first try, after the first ninety-nine had been mended: of 80, 46 were right, 29 said what to choose (14
of these asked for what the table says) and 5 were wrong or lost something: a rate in "[1/s]", microvolts, blank cells
in a fixed width, a switch taken for a signal, a sign with a blank behind it.
"""

from __future__ import annotations

from collections.abc import Callable

from analysis.captures.model import Role
from analysis.importing.choices import TextChoices
from analysis.importing.wishes import Wishes
from tests.importing.strange_tables import REFERENCE_V, ROWS, SIGNAL_V, Strange, comma, rows_as, with_cells

_NAN, _INF = float("nan"), float("inf")


def _rows(make: Callable[[int, float, float, float], str]) -> str:
    """A piece of text a sample: of its number, its time, the signal and the reference."""
    return "".join(make(n, t, s, r) for n, t, s, r in ROWS)


_TABLE = rows_as("{t:.3f};{s};{r}")
_LINES = _TABLE.splitlines()

MORE_UNSEEN = (
    Strange("dutch", ("Tijd [s];Signaal [V];Referentie [V]\n" + comma(_TABLE)).encode()),
    Strange("swedish", ("Tid;Signal;Referens\nms;mV;mV\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("times in quotes only", ('"t [s]";signal;ref\n' + rows_as('"{t:.3f}";{s};{r}')).encode()),
    Strange("tsv with escaped header", ("'t'\t's'\t'r'\n" + _TABLE.replace(";", "\t")).encode()),
    Strange("two spaces as delimiter + names with blanks", ("Elapsed time  Sensor wire  Feed wire\n" + rows_as("{t:.3f}         {s:.3f}        {r:.3f}")).encode()),
    Strange("caret delim", ("time [s]^signal^ref\n" + _TABLE.replace(";", "^")).encode(), says="--delimiter", wishes=Wishes(text=TextChoices(delimiter="^"))),
    Strange("slash delim", ("time [s]~signal~ref\n" + _TABLE.replace(";", "~")).encode(), says="--delimiter", wishes=Wishes(text=TextChoices(delimiter="~"))),
    Strange("colon delim", ("time:signal:ref\n" + _TABLE.replace(";", ":")).encode(), says="--delimiter", wishes=Wishes(text=TextChoices(delimiter=":"), units={"time": "s"})),
    Strange("semis and spaces", ("time ; signal ; ref\n" + _TABLE.replace(";", " ; ")).encode()),
    Strange("comma-space decimals comma", ("time, signal, ref\n" + comma(_TABLE).replace(";", ", ")).encode()),
    Strange("footer", ("time;signal;ref\n" + _TABLE + "*** end of data ***\nchecksum: 4711\n").encode()),
    Strange("page numbers in the middle", ("time;signal;ref\n" + "\n".join([*_LINES[:6], "", "- 1 -", "", *_LINES[6:]]) + "\n").encode()),
    Strange("lots of header keys w numbers", ("".join(f"key{k};{k*3}\n" for k in range(60)) + "time;signal;ref\n" + _TABLE).encode()),
    Strange("header w 3 numbers", ("Cal;1.0;2.0\nCal2;3.0;4.0\n\ntime;signal;ref\n" + _TABLE).encode()),
    Strange("numeric header block", ("3;12;0.001\n1;2;3\ntime;signal;ref\n" + _TABLE).encode()),
    Strange("unitless V header 1 char", ("T;U;R\n" + _TABLE).encode()),
    Strange("k samples", ("Sample rate;1,0;kHz\nsignal;ref\n" + comma(rows_as("{s};{r}"))).encode()),
    Strange("rate in column head", ("signal@1000Hz;ref@1000Hz\n" + rows_as("{s};{r}")).encode(), says="--sample-rate HERTZ", wishes=Wishes(interval_s=1e-3)),
    Strange("interval in us above", ("Interval (us);1000\nA;B\n" + rows_as("{s};{r}")).encode()),
    Strange("total duration only", ("Duration: 11 ms\nsignal;ref\n" + rows_as("{s};{r}")).encode(), says="--sample-rate HERTZ", wishes=Wishes(interval_s=1e-3)),
    Strange("start time + rate", ("Start: 2026-03-04 09:14:07\nSampling rate [1/s]: 1000\nsignal;ref\n" + rows_as("{s};{r}")).encode()),
    Strange("time ms fraction decimal comma with thousands dot", ("Zeit [ms];Signal [mV];Ref [mV]\n" + _rows(lambda n,t,s,r: f"{n+999.5:,.1f};{s*1000:,.0f};{r*1000:,.0f}\n".replace(",","x").replace(".",",").replace("x","."))).encode()),
    Strange("invalid marks", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s}{'*' if n==3 else ''};{r}\n")).encode(), signal=with_cells(SIGNAL_V, row3=_NAN)),
    Strange("over as <", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{'>5.0' if n==3 else s};{r}\n")).encode(), signal=with_cells(SIGNAL_V, row3=_NAN)),
    Strange("bool words", ("time;signal;ref;ok\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r};{'yes' if n%2 else 'no'}\n")).encode()),
    Strange("toggling 0/1 channel", ("time;signal;ref;trigger\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r};{n%2}\n")).encode()),
    Strange("two sensors", ("time;left signal;left ref;right signal;right ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r};{5-s};{r}\n")).encode(), others={Role.SECOND_SIGNAL: (4.5, 3.75, 3.0, 2.25, 1.5, 0.75, 0.5, 1.25, 2.0, 2.75, 3.5, 4.25)}),
    Strange("ground too w/ minus", ("time;signal;ref;ground\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r};{-0.003*(n%2):.3f}\n")).encode(), others={Role.GROUND: (-0.0, -0.003, -0.0, -0.003, -0.0, -0.003, -0.0, -0.003, -0.0, -0.003, -0.0, -0.003)}),
    Strange("unit row in quotes and blanks", ('"time";"signal";"ref"\n"[s]";"[V]";"[V]"\n\n' + _TABLE).encode()),
    Strange("unit row first", ("s;V;V\ntime;signal;ref\n" + _TABLE).encode()),
    Strange("units only", ("s;V;V\n" + _TABLE).encode()),
    Strange("unit only ms mV", ("ms;mV;mV\n" + rows_as("{m};{sm:.0f};{rm:.0f}")).encode()),
    Strange("uV ints, no unit", ("time [s];signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s*1e6:.0f};{r*1e6:.0f}\n")).encode()),
    Strange("time col restarts after blank", ("time [s];signal;ref\n" + _TABLE + "\n" + _TABLE).encode(), records=2),
    Strange("trailing text col w/ commas in comma file", ("time,signal,ref,note\n" + _rows(lambda n,t,s,r: f"{t:.3f},{s},{r},{'arm up, slowly' if n==4 else ''}\n")).encode()),
    Strange("leading zeros counter", ("no;time;signal;ref\n" + _rows(lambda n,t,s,r: f"{n+1:05d};{t:.3f};{s};{r}\n")).encode()),
    Strange("hex counter", ("no;time;signal;ref\n" + _rows(lambda n,t,s,r: f"0x{n+1:02X};{t:.3f};{s};{r}\n")).encode()),
    Strange("date col + ms of day", ("date;ms of day;signal;ref\n" + _rows(lambda n,t,s,r: f"2026-03-04;{33247500+n};{s};{r}\n")).encode(), says="--unit COLUMN=UNIT", wishes=Wishes(units={"ms of day": "ms"})),
    Strange("time with h in header", ("time [hh:mm:ss.000];signal [V];ref [V]\n" + _rows(lambda n,t,s,r: f"09:14:07.{500+n};{s};{r}\n")).encode()),
    Strange("AM before", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"AM 09:14:07.{500+n};{s};{r}\n")).encode(), says="the times in time are written in a way", wishes=Wishes(interval_s=1e-3)),
    Strange("german date words", ("Zeit;Signal;Ref\n" + _rows(lambda n,t,s,r: f"4. März 2026 09:14:07,{500+n};{comma(str(s))};{comma(str(r))}\n")).encode()),
    Strange("german date abbreviated", ("Zeit;Signal;Ref\n" + _rows(lambda n,t,s,r: f"04. Mär. 2026 09:14:07,{500+n};{comma(str(s))};{comma(str(r))}\n")).encode()),
    Strange("time with Uhr", ("Zeit;Signal;Ref\n" + _rows(lambda n,t,s,r: f"09:14:07,{500+n} Uhr;{comma(str(s))};{comma(str(r))}\n")).encode()),
    Strange("T+", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"T+{t:.3f};{s};{r}\n")).encode()),
    Strange("+00:00", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"+00:00:{t:06.3f};{s};{r}\n")).encode()),
    Strange("-00:00 to +", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{'-' if n<5 else '+'}00:00:{abs(t-.005):06.3f};{s};{r}\n")).encode()),
    Strange("scientific with x10^", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{n}x10^-3;{s};{r}\n")).encode()),
    Strange("E without sign pad", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f" {n}.000E-03; {s:.3E}; {r:.4E}\n".replace("E+00","E0"))).encode()),
    Strange("spaces after minus", ("time;signal;ref\n" + _rows(lambda n,t,s,r: f"{'- ' if n<5 else '  '}{abs(t-.005):.3f};{s};{r}\n")).encode()),
    Strange("mac roman", ("Zeit (µs);Höhe (mV);Ref (mV)\n" + _rows(lambda n,t,s,r: f"{n*1000};{s*1000:.0f};{r*1000:.0f}\n")).encode("mac-roman")),
    Strange("cp437", ("Zeit (µs);Höhe (mV);Ref (mV)\n" + _rows(lambda n,t,s,r: f"{n*1000};{s*1000:.0f};{r*1000:.0f}\n")).encode("cp437"), says="--unit COLUMN=UNIT", wishes=Wishes(units={"1": "us"})),
    Strange("utf16 lf no bom be", ("time;signal;ref\n" + _TABLE).encode("utf-16-be")),
    Strange("fixed width no blank touches", ("  TIME SIGNAL    REF\n" + _rows(lambda n,t,s,r: f"{t:6.3f}{s:7.3f}{r:7.3f}\n")).encode()),
    Strange("fixed width blank ref mid", ("    TIME    SIGNAL       REF\n" + "".join(f"{t:8.3f}{s:10.3f}{'' if n%3 else f'{r:.3f}':>10}\n" for n, t, s, r in ROWS)).encode(), reference=with_cells(REFERENCE_V, row1=_NAN, row2=_NAN, row4=_NAN, row5=_NAN, row7=_NAN, row8=_NAN, row10=_NAN, row11=_NAN)),
    Strange("tabs, blanks missing", ("time\tsignal\tref\n" + _rows(lambda n,t,s,r: f"{t:.3f}\t{'' if n==3 else s}\t{r}\n")).encode(), signal=with_cells(SIGNAL_V, row3=_NAN)),
    Strange("trailing spaces and tabs", ("time;signal;ref   \t\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s};{r}  \t\n")).encode()),
    Strange("minus _TABLE at end only missing", ("time;signal;ref\n" + _TABLE + ";;\n;;\n;;\n").encode()),
    Strange("python list", (_rows(lambda n,t,s,r: f"({t:.3f}, {s}, {r})\n")).encode()),
    Strange("braces", (_rows(lambda n,t,s,r: f"{{{t:.3f}, {s}, {r}}},\n")).encode()),
    Strange("named values", (_rows(lambda n,t,s,r: f"t={t:.3f};signal={s};ref={r}\n")).encode()),
    Strange("named colon", (_rows(lambda n,t,s,r: f"t: {t:.3f}, signal: {s}, ref: {r}\n")).encode()),
    Strange("missing time cell", ("time [s];signal;ref\n" + _rows(lambda n,t,s,r: f"{'' if n==5 else f'{t:.3f}'};{s};{r}\n")).encode(), says="time of row 6 is missing", wishes=Wishes(interval_s=1e-3)),
    Strange("lat heads", ("Timestamp (UTC);Analog In 1;Analog In 2\n" + _rows(lambda n,t,s,r: f"2026-03-04 09:14:07.{500+n} UTC;{s};{r}\n")).encode()),
    Strange("mV and V mixed by behaviour", ("time [s];signal [mV];ref [V]\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s*1000:.0f};{r}\n")).encode()),
    Strange("mV signals unitless, ref V", ("time [s];signal;ref\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s*1000:.0f};{r}\n")).encode()),
    Strange("kV", ("time [s];signal [kV];ref [kV]\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s/1000:.6f};{r/1000:.6f}\n")).encode()),
    Strange("MV caps mV?", ("TIME [S];SIGNAL [MV];REF [MV]\n" + _rows(lambda n,t,s,r: f"{t:.3f};{s*1000:.0f};{r*1000:.0f}\n")).encode()),
)  # fmt: skip
