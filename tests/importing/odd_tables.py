# ruff: noqa: E501 - a table a line
"""Twenty odd tables, written by hand in invented layouts: each with what it must be understood as.

Every table holds the same few samples: a signal that rises and, where there is room, a reference at 5 V.
"""

from __future__ import annotations

from dataclasses import dataclass

TIMES_S = (0.0, 0.001, 0.002, 0.003, 0.004, 0.005)
SIGNAL_V = (0.5, 1.25, 2.0, 2.75, 3.5, 4.25)
REFERENCE_V = (5.001, 5.002, 4.999, 5.0, 5.001, 4.998)


@dataclass(frozen=True)
class Odd:
    name: str
    raw: bytes
    reference: bool = True
    interval_s: float | None = None


def _lines(form: str, end: str = "\n", time: float = 1.0, volts: float = 1.0) -> str:
    rows = zip(TIMES_S, SIGNAL_V, REFERENCE_V, strict=True)
    return "".join(form.format(t=t * time, s=s * volts, r=r * volts) + end for t, s, r in rows)


def _comma(text: str) -> str:
    return text.replace(".", ",")


ODD = (
    Odd("plain", ("time,signal,reference\n" + _lines("{t},{s},{r}")).encode()),
    Odd("units below", ("Time;Sensor;Vref\ns;V;V\n" + _comma(_lines("{t:.3f};{s:.2f};{r:.3f}"))).encode()),
    Odd("milliseconds", ("t [ms]\tsig [mV]\tref [mV]\n" + _lines("{t:.0f}\t{s:.0f}\t{r:.0f}", time=1e3, volts=1e3)).encode()),
    Odd("micro sign latin-1", ("t (µs);signal (V);ref (V)\r\n" + _lines("{t:.0f};{s};{r}", "\r\n", time=1e6)).encode("latin-1")),
    Odd("greek mu utf-8", ("t/\u03bcs;signal/mV;ref/mV\n" + _lines("{t:.0f};{s:.0f};{r:.0f}", time=1e6, volts=1e3)).encode()),
    Odd("utf-16", ("Zeit;Signal;Referenz\r\n(s);(V);(V)\r\n" + _comma(_lines("{t:.3f};{s:.3f};{r:.3f}", "\r\n"))).encode("utf-16")),
    Odd("utf-16 without mark", ("time\tsignal\tref\n" + _lines("{t}\t{s}\t{r}")).encode("utf-16-le")),
    Odd("utf-8 mark", b"\xef\xbb\xbf" + ("TIME,SIGNAL,REFERENCE\nS,V,V\n" + _lines("{t},{s},{r}")).encode()),
    Odd("deep heading", ("Workshop bench\nVisit;17\nRemark;arm moved by hand\n\nTime;Signal;Reference\n[s];[V];[V]\n\n"
                         + _lines("{t};{s};{r}")).encode()),
    Odd("comments", ("# taken in the yard\n# time signal ref\n# s V V\n" + _lines("{t} {s} {r}")).encode()),
    Odd("runs of spaces", ("   time    signal     ref\n" + _lines("  {t:8.3f}   {s:7.3f}  {r:7.3f}")).encode()),
    Odd("quotes", ('"time","signal","ref"\n' + _lines('"{t}","{s}","{r}"')).encode()),
    Odd("quoted decimal commas", ('"time","signal","ref"\n' + _comma(_lines('"{t:.3f}"§"{s:.3f}"§"{r:.3f}"')).replace("§", ",")).encode()),
    Odd("delimiter at the end", ("time;signal;ref;\n" + _lines("{t};{s};{r};")).encode()),
    Odd("old line ends", ("time,signal,ref\r" + _lines("{t},{s},{r}", "\r")).encode()),
    Odd("thousands marks", ("time [us]\tsignal [uV]\tref [uV]\n" + _lines("{t:,.0f}\t{s:,.1f}\t{r:,.1f}", time=1e6, volts=1e6)).encode()),
    Odd("apostrophes", ("time [us];signal [uV];ref [uV]\n"
                        + _lines("{t:,.0f};{s:,.1f};{r:,.1f}", time=1e6, volts=1e6).replace(",", "'")).encode()),
    Odd("exponents", ("time,signal,ref\n" + _lines("{t:+.4E},{s:+.6E},{r:+.6E}")).encode()),
    Odd("units in the cells", ("time,signal,ref\n" + _lines("{t:.3f} s,{s:.3f} V,{r:.3f} V")).encode()),
    Odd("time of day", ("Uhrzeit;Signal;Ref\n" + "".join(
        f"13:59:59,{998 + n:03d};{s};{r}\n" if n < 2 else f"14:00:00,{n - 2:03d};{s};{r}\n"
        for n, (s, r) in enumerate(zip(SIGNAL_V, REFERENCE_V, strict=True)))).encode()),
    Odd("interval above", ("Sample interval: 1 ms\nsignal;ref\nV;V\n" + _lines("{s};{r}")).encode()),
    Odd("rate above", ("sampling rate (kHz),1\nsignal,ref\n" + _lines("{s},{r}")).encode()),
    Odd("bars and words", ("no|state|time|signal|ref\n" + "".join(
        f"{n + 1}|ok|{t}|{s}|{r}\n"
        for n, (t, s, r) in enumerate(zip(TIMES_S, SIGNAL_V, REFERENCE_V, strict=True)))).encode()),
    Odd("no heading", _lines("{t},{s},{r}").encode()),
    Odd("one column of decimal commas", _comma("signal\n" + "".join(f"{s:.2f}\n" for s in SIGNAL_V)).encode(), False, 1e-3),
)  # fmt: skip
