/* The grounded labelling of an argumentation framework (Dung 1995; methods H1), for `judge-bench.ts` to run beside.
 * grounded FILE: FILE holds 32-bit whole numbers: the arguments, the attacks, then attackers and attacked in two rows.
 * For each line that it is sent it builds and labels once, and prints the nanoseconds of the processor that this took,
 * and how many arguments are in and out. */
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <time.h>

enum { OUT = -(1 << 30) };

static int64_t now(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return (int64_t)t.tv_sec * 1000000000 + t.tv_nsec;
}

/* What still attacks each argument: 0 it is in, below 0 it is out, else it is undecided. */
static void label(int n, int m, const int32_t *from, const int32_t *to, int32_t *left, int *in, int *out) {
  int32_t *start = calloc(n + 2, sizeof *start), *targets = malloc(m * sizeof *targets), *stack = malloc(n * sizeof *stack);
  memset(left, 0, n * sizeof *left);
  for (int k = 0; k < m; k++) start[from[k] + 2]++, left[to[k]]++;
  for (int a = 2; a <= n + 1; a++) start[a] += start[a - 1];
  for (int k = 0; k < m; k++) targets[start[from[k] + 1]++] = to[k];
  int end = 0;
  *in = *out = 0;
  for (int a = 0; a < n; a++) if (left[a] == 0) stack[end++] = a;
  while (end > 0) {
    int a = stack[--end];
    ++*in;
    for (int i = start[a]; i < start[a + 1]; i++) {
      int b = targets[i];
      if (left[b] <= 0) continue;
      left[b] = OUT;
      ++*out;
      for (int j = start[b]; j < start[b + 1]; j++) if (--left[targets[j]] == 0) stack[end++] = targets[j];
    }
  }
  free(start), free(targets), free(stack);
}

int main(int count, char **words) {
  FILE *file = count > 1 ? fopen(words[1], "rb") : NULL;
  int32_t size[2];
  if (!file || fread(size, sizeof *size, 2, file) != 2) return 2;
  int n = size[0], m = size[1], in = 0, out = 0;
  int32_t *attacks = malloc(2 * (size_t)m * sizeof *attacks), *left = malloc(n * sizeof *left);
  if (fread(attacks, sizeof *attacks, 2 * (size_t)m, file) != 2 * (size_t)m) return 2;
  for (int c = getchar(); c != EOF; c = getchar()) {
    int64_t begun = now();
    label(n, m, attacks, attacks + m, left, &in, &out);
    printf("%lld %d %d\n", (long long)(now() - begun), in, out);
    fflush(stdout);
  }
  return 0;
}
