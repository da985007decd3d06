"""A stretch of a record, looked at as a record of its own."""

from __future__ import annotations

import numpy as np
import pytest

from analysis.captures.memory import make_channel, make_record
from analysis.captures.model import Record, Role, Scaling, Step
from analysis.captures.spans import span_of


def _whole() -> Record:
    channels = [
        make_channel(Role.SIGNAL, np.arange(100, dtype=np.int16), Scaling(0.01), name="a"),
        make_channel(Role.GROUND, np.arange(100, 200, dtype=np.int16), Scaling(0.01), name="b"),
    ]
    return make_record("007", 0.5, channels, step=Step.SWEEP, first_sample_s=3.0)


def test_a_span_reads_the_samples_and_the_time_of_the_whole() -> None:
    span = span_of(_whole(), 20, 50, step=Step.GROUND, role=None)
    assert (span.name, len(span), span.step) == ("007", 30, Step.GROUND)
    np.testing.assert_array_equal(span.channels[0].volts(), _whole().channels[0].volts(20, 50))
    np.testing.assert_array_equal(span.time_s(), _whole().time_s(20, 50))


@pytest.mark.parametrize(("start", "stop"), [(-5, 3), (0, 30), (10, 12), (28, 99), (30, 40), (5, 2)])
def test_a_span_is_clipped_at_its_own_ends_like_any_array(start: int, stop: int) -> None:
    source = span_of(_whole(), 20, 50, step=None, role=None).channels[0].source
    expected = np.arange(20, 50)[max(start, 0) : max(stop, 0)]
    np.testing.assert_array_equal(source.read(start, stop), expected)


def test_a_role_of_its_own_goes_to_the_first_channel_only() -> None:
    span = span_of(_whole(), 0, 10, step=None, role=Role.REFERENCE)
    assert [item.role for item in span.channels] == [Role.REFERENCE, Role.GROUND]
    assert [item.role for item in _whole().channels] == [Role.SIGNAL, Role.GROUND]


def test_a_span_of_a_span_counts_from_the_inner_start() -> None:
    inner = span_of(span_of(_whole(), 20, 80, step=None, role=None), 5, 15, step=None, role=None)
    np.testing.assert_array_equal(inner.channels[0].source.read(0, 10), np.arange(25, 35))
    assert inner.first_sample_s == 3.0 + 25 * 0.5
