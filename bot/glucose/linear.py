"""The little linear algebra that pooling needs: symmetric systems of a dozen unknowns."""

import math
from collections.abc import Sequence

Vector = list[float]
Matrix = list[list[float]]


def dot(a: Sequence[float], b: Sequence[float]) -> float:
    """The inner product."""
    return sum(x * y for x, y in zip(a, b, strict=True))


def cholesky(matrix: Sequence[Sequence[float]]) -> Matrix:
    """The lower triangle L with L L' = matrix. Raises ValueError if not positive definite."""
    lower: Matrix = []
    for i, row in enumerate(matrix):
        new: Vector = []
        for j in range(i):
            new.append((row[j] - dot(new[:j], lower[j][:j])) / lower[j][j])
        left = row[i] - dot(new, new)
        if left <= 0:
            raise ValueError("the matrix is not positive definite")
        lower.append([*new, math.sqrt(left)])
    return lower


def inverse(lower: Sequence[Sequence[float]]) -> Matrix:
    """The inverse of the matrix whose Cholesky triangle is given."""
    size = len(lower)
    columns = [solve(lower, [float(i == j) for i in range(size)]) for j in range(size)]
    return [[columns[j][i] for j in range(size)] for i in range(size)]


def solve(lower: Sequence[Sequence[float]], right: Sequence[float]) -> Vector:
    """The x of matrix x = right, by the Cholesky triangle of the matrix."""
    size = len(lower)
    forward: Vector = []
    for i in range(size):
        forward.append((right[i] - dot(lower[i][:i], forward)) / lower[i][i])
    x = [0.0] * size
    for i in reversed(range(size)):
        known = sum(lower[k][i] * x[k] for k in range(i + 1, size))
        x[i] = (forward[i] - known) / lower[i][i]
    return x


def log_determinant(lower: Sequence[Sequence[float]]) -> float:
    """The logarithm of the determinant of the matrix whose triangle is given."""
    return 2 * sum(math.log(row[i]) for i, row in enumerate(lower))
