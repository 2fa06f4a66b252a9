from trials.management.measuring import measure


def test_every_measurement_runs_and_has_something_to_compare_with():
    found = measure(repeats=1)
    assert [one.what.split(",")[0] for one in found] == [
        "Dunnett",
        "Dunnett",
        "a series judged: 40 cups",
    ]
    assert all(one.ours_ms > 0 and one.scipy_ms > 0 for one in found)
