# Milliseconds of the cosine quantograms by angle addition as one matrix product for each 20 sets: the frequencies
# are coarse plus fine, so that cos(a + b) = cos a cos b - sin a sin b turns 2,000 of them into 40 times 50.
import sys
import time

import numpy

lengths, units, sets = (int(word) for word in sys.argv[1:])
random = numpy.random.default_rng(11)
values = random.uniform(5, 200, (sets, lengths))
fine_count, coarse_count = 50, -(-units // 50)
step = 0.95 / (units - 1)
fine = 2 * numpy.pi * step * numpy.arange(fine_count)
coarse = 2 * numpy.pi * (1 / 20 + step * fine_count * numpy.arange(coarse_count))
begun = time.perf_counter()
worst = 0.0
for row in values:
    by_fine, by_coarse = numpy.outer(row, fine), numpy.outer(row, coarse)
    left = numpy.vstack([numpy.cos(by_coarse), -numpy.sin(by_coarse)])
    right = numpy.vstack([numpy.cos(by_fine), numpy.sin(by_fine)])
    worst = max(worst, float((left.T @ right).max()))
print((time.perf_counter() - begun) * 1000)
