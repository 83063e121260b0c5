"""A great many shots: the engine, and SciPy's Delaunay with NumPy's prisms over the same shots, each in a process of its own.

    benches/scale [COUNT ...]

For each count: seconds of both, their ratio, and bytes of memory per shot at the peak, the shots themselves not counted.
Ours and the twin's run in turn, so that the ratio stands where the machine is noisy; where other work shares the machine the
time on a processor tells more. The twin leaves out what lies beyond the
shots; where a wheel of the package is installed the Python function is timed as well, and the finish of least concrete over the same shots.
"""

import json
import math
import pathlib
import resource
import subprocess
import sys
import time

ROOT = pathlib.Path(__file__).parents[1]
ENGINE = ROOT / "target/release/scale"
PITCH, UNEVEN, STRIDE, FINISH = 0.5, 0.05, 2_654_435_761, 0.1
TWIN_MOST = 2_000_000
COUNTS = [10_000, 100_000, 1_000_000, 10_000_000]


def shots(count):
    """The shots of the engine's bench: one in every square, by splitmix64."""
    import numpy as np

    mixed = (np.arange(3 * count, dtype=np.uint64) + np.uint64(1)) * np.uint64(0x9E3779B97F4A7C15)
    mixed = (mixed ^ (mixed >> np.uint64(30))) * np.uint64(0xBF58476D1CE4E5B9)
    mixed = (mixed ^ (mixed >> np.uint64(27))) * np.uint64(0x94D049BB133111EB)
    numbers = ((mixed ^ (mixed >> np.uint64(31))) >> np.uint64(11)).astype(float) / 2.0**53
    x, y, z = numbers.reshape(count, 3).T
    square = np.arange(count, dtype=np.uint64) * np.uint64(STRIDE) % np.uint64(count)
    side = np.uint64(math.isqrt(count))
    x, y = PITCH * (square % side + 0.1 + 0.8 * x), PITCH * (square // side + 0.1 + 0.8 * y)
    return np.ascontiguousarray(x), np.ascontiguousarray(y), np.ascontiguousarray(UNEVEN * z)


def resident():
    """The peak of this process's memory so far, in bytes."""
    return 1024 * resource.getrusage(resource.RUSAGE_SELF).ru_maxrss


def twin(count):
    """SciPy's Delaunay triangles, NumPy's prism volumes."""
    import numpy as np
    from scipy.spatial import Delaunay

    x, y, z = shots(count)
    points = np.column_stack([x, y])
    before, start, had = resident(), time.perf_counter(), time.process_time()
    triangles = Delaunay(points).simplices
    corners = points[triangles]
    a, b = corners[:, 1] - corners[:, 0], corners[:, 2] - corners[:, 0]
    areas = 0.5 * np.abs(a[:, 0] * b[:, 1] - a[:, 1] * b[:, 0])
    volume = float((areas * (FINISH - z[triangles]).mean(axis=1)).sum())
    return {**spent(before, start, had, count), "volume": volume}


def spent(before, start, had, count):
    """Seconds, seconds on a processor, and memory since the work was begun."""
    return {
        "seconds": time.perf_counter() - start,
        "processor": time.process_time() - had,
        "bytes_per_shot": (resident() - before) / count,
    }


def package(count):
    """The Python function over NumPy arrays; nothing where the package is not installed."""
    try:
        from overslab import grade, survey
    except ImportError:
        return None
    x, y, z = shots(count)
    size = PITCH * math.isqrt(count)
    outline = survey.outline_from_corners(corners={"x": [0, size, size, 0], "y": [0, 0, size, size]}, units="si")
    finish = grade.finish_level(elevation=FINISH, units="si")
    before, start, had = resident(), time.perf_counter(), time.process_time()
    floor = survey.survey_from_shots(outline=outline, shots={"x": x, "y": y, "elevation": z}, units="si")
    meshed = time.process_time() - had
    volume = grade.thickness(survey=floor, finish=finish).net_m3
    taken = spent(before, start, had, count)
    had = time.process_time()
    demands = {"name": ["least", "fall"], "kind": ["least_thickness", "steepest"], "thickness": [75.0, None], "fall": [None, 2.0]}
    bound = grade.finish_solved(survey=floor, demands=demands, margin=0.0, set_out="no", units="si").bound_m3
    return {**taken, "volume": volume, "meshed": meshed, "solved": time.process_time() - had, "bound": bound}


def apart(work, count):
    """A piece of work in a process of its own."""
    done = subprocess.run([sys.executable, __file__, work, str(count)], check=True, capture_output=True, text=True)
    return json.loads(done.stdout)


def engine(count):
    return json.loads(subprocess.run([ENGINE, str(count)], check=True, capture_output=True, text=True).stdout)


def least(runs):
    return min(runs, key=lambda run: run["seconds"])


def line(count):
    """One line of the table: the best of a few rounds of each."""
    rounds = 5 if count <= 100_000 else 2
    twins = count <= TWIN_MOST
    runs = [(engine(count), apart("twin", count) if twins else None) for _ in range(rounds if twins else 1)]
    ours = least([mine for mine, _ in runs])
    text = f"{count:>11,} {ours['seconds']:10.4f} s {ours['bytes_per_shot']:6.0f} bytes/shot"
    if ours["processor"] is not None:
        text += f" ({ours['processor']:.4f} s on a processor)"
    if twins:
        other = least([other for _, other in runs])
        ratio = other["seconds"] / ours["seconds"]
        text += f"   twin {other['seconds']:10.4f} s {other['bytes_per_shot']:6.0f} bytes/shot   ratio {ratio:5.1f}"
        if ours["processor"] is not None:
            processor = min(run["processor"] for _, run in runs) / min(run["processor"] for run, _ in runs)
            text += f" (on a processor {processor:5.1f})"
    through = apart("package", count)
    if through:
        text += f"   through Python {through['seconds']:10.4f} s {through['bytes_per_shot']:6.0f} bytes/shot"
        share = 100.0 * through["solved"] / through["meshed"]
        text += f"   least concrete {through['solved']:8.4f} s, {share:4.1f} % of the meshing"
    return text


def main(given):
    if given and given[0] in ("twin", "package"):
        print(json.dumps({"twin": twin, "package": package}[given[0]](int(given[1]))))
        return
    for count in [int(count) for count in given] or COUNTS:
        print(line(math.isqrt(count) ** 2), flush=True)


if __name__ == "__main__":
    main(sys.argv[1:])
