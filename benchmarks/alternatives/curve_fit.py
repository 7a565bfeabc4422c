"""The same fits by SciPy's curve_fit (MINPACK's Levenberg-Marquardt), start and derivatives given.

Reads FOLDER/fits.csv (fit, age in days, kg), writes FOLDER/scipy.csv: the name, microseconds of the first fit and of one of the others, then A, k, t of each fit.
"""
import csv
import itertools
import os
import statistics
import sys
import time

import numpy
import scipy
from scipy.optimize import curve_fit

folder = sys.argv[1]


def gompertz(x, a, k, t):
    return a * numpy.exp(-numpy.exp(-k * (x - t)))


def slopes(x, a, k, t):
    e = numpy.exp(-k * (x - t))
    share = numpy.exp(-e)
    return numpy.column_stack((share, a * share * e * (x - t), -a * share * e * k))


def fit(points):
    try:
        return curve_fit(gompertz, points[0], points[1], (6, 0.05, 35), jac=slopes, method="lm", ftol=1e-9, xtol=1e-9, gtol=1e-9)[0]
    except RuntimeError:
        return (float("nan"),) * 3


def seconds(runs, work):
    times = []
    for _ in range(runs):
        start = time.perf_counter()
        result = work()
        times.append(time.perf_counter() - start)
    return statistics.median(times), result


with open(os.path.join(folder, "fits.csv")) as file:
    rows = list(csv.DictReader(file))
fits = [numpy.array([(float(row["days"]), float(row["kg"])) for row in group]).T for _, group in itertools.groupby(rows, lambda row: row["fit"])]
fit(fits[0])
one, _ = seconds(5, lambda: [fit(fits[0]) for _ in range(100)])
many, found = seconds(3, lambda: [fit(points) for points in fits[1:]])
with open(os.path.join(folder, "scipy.csv"), "w") as file:
    print(f"SciPy {scipy.__version__}, curve_fit, start and derivatives given;{one * 1e4:.3f};{many * 1e6 / (len(fits) - 1):.3f}", file=file)
    for parameters in [fit(fits[0]), *found]:
        print(";".join(repr(float(p)) for p in parameters), file=file)
