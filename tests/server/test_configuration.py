import pytest

from labbook.server.configuration import configuration, shared_buffers_mb


@pytest.mark.parametrize(
    ("memory_gb", "buffers_mb"),
    [(0.25, 128), (1, 256), (4, 1024), (8, 2048), (64, 2048)],
    ids=["at least the default", "a quarter", "a quarter still", "at the cap", "capped"],
)
def test_shared_buffers_are_a_quarter_of_the_memory_up_to_2_gb(memory_gb, buffers_mb):
    assert shared_buffers_mb(int(memory_gb * 1024**3)) == buffers_mb


def test_only_a_throwaway_server_forgoes_durability(tmp_path):
    assert "fsync" not in configuration(socket=tmp_path, durable=True)
    assert "fsync = off" in configuration(socket=tmp_path, durable=False)
