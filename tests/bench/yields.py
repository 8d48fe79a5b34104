"""The yield of yields.mjs with the Python library for numbers with uncertainties; prints microseconds and the uncertainty."""

import json
import sys
from timeit import repeat

from uncertainties import ufloat_fromstr

data = json.load(sys.stdin)
texts = {name: f"{value}+/-{spread}" for name, (value, spread, _) in data["inputs"].items()}
made, given = data["made"], data["given"]


def yield_of():
    read = {name: ufloat_fromstr(text) for name, text in texts.items()}
    mass = lambda counts: sum(times * read[symbol] for symbol, times in counts.items())
    actual = read["gross"] - read["tare"] - read["paper"] + read["drops"]
    possible = read["used"] * read["assay"] / mass(given) * read["ratio"] * mass(made)
    return (actual / possible).std_dev


best = min(repeat(yield_of, number=200, repeat=10)) / 200
print(json.dumps({"time": best * 1e6, "uncertainty": yield_of()}))
