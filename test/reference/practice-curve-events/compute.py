"""Practice curve with dated events: flat probability and the size of an event, from the definitions.

Each cell's marginal model is y ~ N(a + b f + Z mu, sigma^2 (R + Z D Z')), with a flat and sigma^2 scaled inverse
chi-squared; events enter the covariance (dense matrices), not the design as in the project. Given a cell, an event
is Student t about its conditional mean. Run: python3 compute.py > practice-curve-events.json
"""

import json

import numpy as np
from scipy import stats
from scipy.optimize import brentq

CASES = {
    "step": {
        "lapsBefore": [0, 25, 50, 75, 100, 125, 150, 175],
        "laps": 25,
        "mediansMs": [86771, 85963, 85647, 85624, 84128, 83749, 83001, 82935],
        "event": {"kind": "step", "afterSession": 4},
    },
    "break": {
        "lapsBefore": [0, 20, 40, 60, 80, 100],
        "laps": 20,
        "mediansMs": [91259, 91335, 90414, 90998, 91941, 91133],
        "event": {"kind": "break", "afterSession": 4},
    },
}


def posterior(case):
    y = np.array(case["mediansMs"], float)
    before = np.array(case["lapsBefore"], float)
    x = before + case["laps"] / 2
    n = len(y)
    M = np.median(y)
    k = case["event"]["afterSession"]
    after = np.arange(n) >= k
    if case["event"]["kind"] == "step":
        z, mu, D = after.astype(float), 0.0, 16.0
    else:
        start = before[k - 1] + case["laps"]
        z, mu, D = np.where(after, 2.0 ** (-(x - start) / 20), 0.0), 0.005 * M, 1.25**2
    nu, s2 = 3, (0.004 * M) ** 2
    hs = np.geomspace(15, 2000, 25)
    shares = np.geomspace(0.002, 0.15, 24)
    cells = [(0.0, 1e9, np.log(0.15))] + [
        (c * M, h, np.log(0.85 * np.sqrt(c) / np.sqrt(shares).sum() / 25)) for h in hs for c in shares
    ]
    out = []
    one = np.ones(n)
    for rho in (0.0, 0.35, 0.7):
        R = rho ** np.abs(np.subtract.outer(np.arange(n), np.arange(n)))
        V = R + D * np.outer(z, z)
        Vi = np.linalg.inv(V)
        logdet = np.linalg.slogdet(V)[1]
        i11 = one @ Vi @ one
        for b, h, prior in cells:
            r = y - b * 2.0 ** (-x / h) - mu * z
            m = (one @ Vi @ r) / i11
            q = r - m
            S = q @ Vi @ q
            df = nu + n - 1
            lw = prior - 0.5 * logdet - 0.5 * np.log(i11) - df / 2 * np.log(nu * s2 + S)
            v = (nu * s2 + S) / df
            # conditional mean and variance of the event, the floor being unknown too
            mean = mu + D * (z @ Vi @ q)
            P = Vi - np.outer(Vi @ one, one @ Vi) / i11
            var = D - D * D * (z @ P @ z)
            out.append((lw, b == 0, mean, np.sqrt(v * var), df))
    lw = np.array([o[0] for o in out])
    w = np.exp(lw - lw.max())
    w /= w.sum()
    mean = np.array([o[2] for o in out])
    scale = np.array([o[3] for o in out])
    df = out[0][4]

    def quantile(p):
        return brentq(lambda t: (w * stats.t.cdf((t - mean) / scale, df)).sum() - p, mean.min() - 1e5, mean.max() + 1e5)

    return {
        "flat": float(w[np.array([o[1] for o in out])].sum()),
        "event": {str(p): quantile(p) for p in (0.05, 0.25, 0.5, 0.75, 0.95)},
    }


print(json.dumps({"data": CASES, "expected": {name: posterior(case) for name, case in CASES.items()}}, indent=2))
