/*
 * The finite-volume scheme of packages/science/src/heat/finite-volume.ts in plain C, as the yardstick of heat-cross-section.ts:
 * a homogeneous cylinder whose whole surface follows straight lines, alternating directions, the same cells and loops.
 * Build: cc -O3 -march=native finite-volume.c -lm. Run: a.out 64 128 7200. Prints milliseconds of processor time, the
 * cell at the middle, heat that came in, and minutes at 250 F that the very middle is worth (z 10 C, straight lines between steps).
 */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

static const double R = 0.0375, H = 0.11, K = 0.6, RHO_CP = 4e6, DT = 1.0, INITIAL_C = 60.0;
static const double AT_MIN[] = {0, 5, 15, 20, 60, 90, 120};
static const double AT_C[] = {60, 98, 99, 116, 116, 98, 40};

static double surface(double minutes) {
  for (int k = 1; k < 7; k++)
    if (minutes <= AT_MIN[k])
      return AT_C[k - 1] + (AT_C[k] - AT_C[k - 1]) * (minutes - AT_MIN[k - 1]) / (AT_MIN[k] - AT_MIN[k - 1]);
  return AT_C[6];
}

typedef struct { double *inv, *f, *e; } factors;

static void sweep_radial(double *restrict u, double *restrict q, const factors s, int nr, int nz) {
  const double *restrict inv = s.inv, *restrict f = s.f, *restrict e = s.e;
  for (int at = 0; at < nz; at++) {
    double rhs = 2 * u[at] - q[at];
    q[at] = rhs;
    u[at] = rhs * inv[at];
  }
  for (int i = 1; i < nr; i++) {
    double *restrict here = u + (size_t)i * nz;
    const double *restrict before = here - nz;
    double *restrict qi = q + (size_t)i * nz;
    const double *restrict vi = inv + (size_t)i * nz, *restrict fi = f + (size_t)i * nz;
    for (int j = 0; j < nz; j++) {
      double rhs = 2 * here[j] - qi[j];
      qi[j] = rhs;
      here[j] = rhs * vi[j] + fi[j] * before[j];
    }
  }
  for (int i = nr - 2; i >= 0; i--) {
    double *restrict here = u + (size_t)i * nz;
    const double *restrict after = here + nz, *restrict ei = e + (size_t)i * nz;
    for (int j = 0; j < nz; j++) here[j] += ei[j] * after[j];
  }
}

static void sweep_axial(double *restrict u, double *restrict q, const factors s, int nr, int nz) {
  const double *restrict inv = s.inv, *restrict f = s.f, *restrict e = s.e;
  for (int i = 0; i + 4 <= nr; i += 4) {
    size_t a = (size_t)i * nz, b = a + nz, c = b + nz, d = c + nz;
    double ua = 0, ub = 0, uc = 0, ud = 0;
    for (int j = 0; j < nz; j++) {
      double ra = 2 * u[a + j] - q[a + j], rb = 2 * u[b + j] - q[b + j];
      double rc = 2 * u[c + j] - q[c + j], rd = 2 * u[d + j] - q[d + j];
      q[a + j] = ra; q[b + j] = rb; q[c + j] = rc; q[d + j] = rd;
      ua = ra * inv[a + j] + f[a + j] * ua; ub = rb * inv[b + j] + f[b + j] * ub;
      uc = rc * inv[c + j] + f[c + j] * uc; ud = rd * inv[d + j] + f[d + j] * ud;
      u[a + j] = ua; u[b + j] = ub; u[c + j] = uc; u[d + j] = ud;
    }
    ua = ub = uc = ud = 0;
    for (int j = nz - 1; j >= 0; j--) {
      ua = u[a + j] + e[a + j] * ua; ub = u[b + j] + e[b + j] * ub;
      uc = u[c + j] + e[c + j] * uc; ud = u[d + j] + e[d + j] * ud;
      u[a + j] = ua; u[b + j] = ub; u[c + j] = uc; u[d + j] = ud;
    }
  }
}

static double on_axis(const double *u, int j, int nz) { return (9 * u[j] - u[nz + j]) / 8; }

/* By the parabola through the cells beside it, as in jar-mesh.ts. */
static double middle_c(const double *u, int nz) {
  int j = nz / 2;
  double near = (on_axis(u, j - 1, nz) + on_axis(u, j, nz)) / 2, far = (on_axis(u, j - 2, nz) + on_axis(u, j + 1, nz)) / 2;
  return (9 * near - far) / 8;
}

static double lethality_min(const double *c, int steps) {
  double k = log(10) / 10, reference = (250 - 32) / 1.8, sum = 0;
  for (int i = 0; i < steps; i++) {
    double x = k * (c[i + 1] - c[i]), from = exp(k * (c[i] - reference));
    sum += fabs(x) < 1e-3 ? from * (1 + x / 2 + x * x / 6) : from * (exp(x) - 1) / x;
  }
  return sum * DT / 60;
}

int main(int argc, char **argv) {
  int nr = argc > 1 ? atoi(argv[1]) : 64, nz = argc > 2 ? atoi(argv[2]) : 128, steps = argc > 3 ? atoi(argv[3]) : 7200;
  size_t size = (size_t)nr * nz;
  double *m[9];
  for (int k = 0; k < 9; k++) m[k] = malloc(size * sizeof(double));
  double *u = m[0], *q = m[1], *cap = m[2];
  factors radial = {m[3], m[4], m[5]}, axial = {m[6], m[7], m[8]};
  double dr = R / nr, dz = H / nz;
  double *outward = malloc(nr * sizeof(double)), *ring = malloc(nr * sizeof(double));
  for (int i = 0; i < nr; i++) {
    ring[i] = M_PI * dr * dr * ((i + 1.0) * (i + 1.0) - (double)i * i);
    outward[i] = 2 * M_PI * (i + 1) * dr * dz / (i + 1 < nr ? dr / K : dr / 2 / K);
  }
  for (int i = 0; i < nr; i++)
    for (int j = 0; j < nz; j++) {
      size_t at = (size_t)i * nz + j;
      cap[at] = RHO_CP * ring[i] * dz;
      double h = DT / 2 / cap[at], inner = ring[i] * K / dz, end = ring[i] * K / (dz / 2);
      double in = i ? h * outward[i - 1] : 0, out = h * outward[i];
      radial.inv[at] = 1 / (1 + in + out - (i ? in * radial.e[at - nz] : 0));
      radial.f[at] = in * radial.inv[at];
      radial.e[at] = i < nr - 1 ? out * radial.inv[at] : 0;
      double below = h * (j ? inner : end), above = h * (j < nz - 1 ? inner : end);
      axial.inv[at] = 1 / (1 + below + above - (j ? below * axial.e[at - 1] : 0));
      axial.f[at] = j ? below * axial.inv[at] : 0;
      axial.e[at] = j < nz - 1 ? above * axial.inv[at] : 0;
      u[at] = q[at] = INITIAL_C;
    }
  double *end_share = malloc(nr * sizeof(double));
  for (int i = 0; i < nr; i++) end_share[i] = DT / 2 * ring[i] * K / (dz / 2) / cap[(size_t)i * nz];
  double side_share = DT / 2 * outward[nr - 1] / cap[(size_t)(nr - 1) * nz];
  /* q = u + A u along the height, without the surface: the food is even, so only the ends have anything. */
  for (int i = 0; i < nr; i++) {
    q[(size_t)i * nz] += end_share[i] * INITIAL_C;
    q[(size_t)i * nz + nz - 1] += end_share[i] * INITIAL_C;
  }
  double entered = 0;
  double *middle = malloc((steps + 1) * sizeof(double));
  middle[0] = INITIAL_C;
  struct timespec from, to;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &from);
  double ends_c = surface(0);
  for (int step = 0; step < steps; step++) {
    double side_c = surface((step + 0.5) * DT / 60);
    for (int half = 0; half < 2; half++) {
      if (half) ends_c = surface((step + 1) * DT / 60);
      double ends = 0;
      if (!half)
        for (int i = 0; i < nr; i++)
          ends += end_share[i] * cap[(size_t)i * nz] * (2 * ends_c - u[(size_t)i * nz] - u[(size_t)i * nz + nz - 1]);
      for (int i = 0; i < nr; i++) {
        q[(size_t)i * nz] -= end_share[i] * ends_c;
        q[(size_t)i * nz + nz - 1] -= end_share[i] * ends_c;
      }
      double *last = q + (size_t)(nr - 1) * nz;
      for (int j = 0; j < nz; j++) last[j] -= side_share * side_c;
      if (half) sweep_axial(u, q, axial, nr, nz);
      else {
        sweep_radial(u, q, radial, nr, nz);
        for (int j = 0; j < nz; j++)
          entered += 2 * side_share * cap[(size_t)(nr - 1) * nz] * (side_c - u[(size_t)(nr - 1) * nz + j]);
      }
      if (half)
        for (int i = 0; i < nr; i++)
          ends += end_share[i] * cap[(size_t)i * nz] * (2 * ends_c - u[(size_t)i * nz] - u[(size_t)i * nz + nz - 1]);
      entered += ends;
    }
    middle[step + 1] = middle_c(u, nz);
  }
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &to);
  double ms = (to.tv_sec - from.tv_sec) * 1e3 + (to.tv_nsec - from.tv_nsec) / 1e6;
  printf("%.4f %.15g %.15g %.15g\n", ms, u[nz / 2], entered, lethality_min(middle, steps));
  return 0;
}
