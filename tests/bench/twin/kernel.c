/*
 * The shot kernel of core/plan/shot-batch.ts once more in C, for the benchmark alone: strike and wind, carry to the ground that is
 * there, trees along the spot's rays, landing, bounce and roll, lie. Reads one file of doubles (see twin.ts), plays every stand's
 * batch over and over, and prints the seconds of the fastest of ten rounds and the sums of the ends.
 */
#include <math.h>
#include <stdint.h>
#include <stdio.h>
#include <stdlib.h>
#include <time.h>

enum { LIES = 16, SLOPES = 5, RISES = 128, RAYS = 240, MOST_SHOTS = 128 };

typedef struct {
  double x, y, bearing, start, stance;
  double carryMean, carrySd, directionMean, directionSd, correlation, directionOwn;
  double poorShare, poorCarryMean, poorCarrySd, poorDirectionSd, runFactor, runSdShare;
  double carryFactor, turn, isGusty, gustCarry, gustTurn, tanLaunch, skew, topShare;
  double runCarry, launch, landing;
  double carryShare[RISES];
  double costPerM[LIES], bounceM[SLOPES * LIES], rollSquare[SLOPES * LIES], sideM[LIES];
  int first[RAYS], count[RAYS];
  int trunkCount;
  double *trunks;
} Stand;

static double west, south, perM, leastX, leastY, mostX, mostY;
static int columns, rows, hasElevation, isLevel, lies, shots, risesteps;
static double slopePull, longestRoll, hopShare, leastCost, rollStep, mostAside, poorWind, shortest, poorLaunch, canopyStep,
    lowestRise, rowsPerSlope, levelRow, slopeStep, slopeZero;
static int32_t *words;
static float *elevation;
static double *draws[6];
static float *stretches;
static Stand *stands;
static double ux[MOST_SHOTS], uy[MOST_SHOTS], level[MOST_SHOTS], carry[MOST_SHOTS], turned[MOST_SHOTS], endX[MOST_SHOTS],
    endY[MOST_SHOTS];
static uint8_t poor[MOST_SHOTS], stopped[MOST_SHOTS], endLie[MOST_SHOTS];

static double *input;
static double next(void) { return *input++; }
static void take(double *to, int count) {
  for (int i = 0; i < count; i++) to[i] = next();
}

static inline int clamp(int value, int count) { return value < 0 ? 0 : value >= count ? count - 1 : value; }
static inline int cellAt(double x, double y) {
  return clamp((int)((y - south) * perM), rows) * columns + clamp((int)((x - west) * perM), columns);
}

static void strike(const Stand *s) {
  const double aimSin = sin(s->bearing), aimCos = cos(s->bearing);
  for (int k = 0; k < shots; k++) {
    const double z1 = draws[0][k], z2 = draws[1][k];
    const int isPoor = draws[4][k] < s->poorShare;
    double factor = s->carryFactor, struck, direction;
    if (isPoor) {
      struck = s->poorCarryMean + s->poorCarrySd * z1;
      direction = s->directionMean + s->poorDirectionSd * z2;
    } else {
      struck = s->carryMean + s->carrySd * z1;
      direction = s->directionMean + s->directionSd * (s->correlation * z1 + s->directionOwn * z2);
    }
    double wind = s->turn;
    if (s->isGusty != 0) {
      factor += s->gustCarry * draws[3][k];
      wind += s->gustTurn * draws[3][k];
    }
    if (isPoor) {
      factor = 1 + poorWind * (factor - 1);
      wind *= poorWind;
    }
    direction += s->stance + wind;
    const double flown = struck * factor, q = direction * direction;
    double si, co;
    if (q < 0.36) {
      si = direction * (1 - (q / 6) * (1 - (q / 20) * (1 - (q / 42) * (1 - q / 72))));
      co = 1 - (q / 2) * (1 - (q / 12) * (1 - (q / 30) * (1 - (q / 56) * (1 - q / 90))));
    } else {
      si = sin(direction);
      co = cos(direction);
    }
    ux[k] = aimSin * co + aimCos * si;
    uy[k] = aimCos * co - aimSin * si;
    level[k] = flown > shortest ? flown : shortest;
    turned[k] = direction;
    poor[k] = isPoor;
    stopped[k] = 0;
  }
}

static void reach(const Stand *s) {
  const double perShare = risesteps / (s->topShare - lowestRise);
  for (int k = 0; k < shots; k++) {
    const double far = level[k];
    const double rise = elevation[cellAt(s->x + ux[k] * far, s->y + uy[k] * far)] - s->start;
    const double at = (rise / far - lowestRise) * perShare;
    const double position = at < 0 ? 0 : at > risesteps ? risesteps : at;
    const int step = position < risesteps ? (int)position : risesteps - 1;
    const double share = s->carryShare[step] + (position - step) * (s->carryShare[step + 1] - s->carryShare[step]);
    const double reached = far * share;
    carry[k] = reached > shortest ? reached : shortest;
  }
}

static double stopOn(const Stand *s, int ray, int k, double depth, int *hitWood) {
  const double far = carry[k], perCarry = 1 / level[k], skew = s->skew;
  const double launch = poor[k] ? s->tanLaunch * poorLaunch : s->tanLaunch;
  double passed = 0;
  const float *at = stretches + s->first[ray];
  for (const float *end = at + 6 * s->count[ray]; at < end; at += 6) {
    const double begin = at[0];
    if (begin >= far) break;
    const double last = at[1];
    if (last < 0) {
      const double *t = s->trunks + 4 * (int)(-1 - last);
      const double tx = t[0] - s->x, ty = t[1] - s->y;
      const double along = tx * ux[k] + ty * uy[k], aside = tx * uy[k] - ty * ux[k];
      if (along <= 0 || along >= far || aside > t[2] || aside < -t[2]) continue;
      const double f = along / level[k];
      if (s->start + along * launch * (1 - f) * (1 + skew * f) >= t[3]) continue;
      *hitWood = 1;
      return along;
    }
    const double until = last < far ? last : far, top = at[2];
    const double f0 = begin * perCarry, f1 = until * perCarry;
    if (begin * launch * (1 - f0) * (1 + skew * f0) >= top && until * launch * (1 - f1) * (1 + skew * f1) >= top) continue;
    const double base = at[3], density = at[4], stems = at[5];
    for (double r = begin + canopyStep / 2; r < until; r += canopyStep) {
      const double f = r * perCarry, height = r * launch * (1 - f) * (1 + skew * f);
      if (height >= top) continue;
      const int inCrown = height > base;
      passed += (inCrown ? density : stems) * canopyStep;
      if (passed > depth) {
        *hitWood = !inCrown;
        return r;
      }
    }
  }
  return -1;
}

static void meet(const Stand *s) {
  for (int k = 0; k < shots; k++) {
    int ray = (int)((s->bearing + turned[k]) * (RAYS / (2 * M_PI)) + (8 * RAYS + 0.5)) % RAYS;
    if (ray < 0) ray += RAYS;
    if (s->count[ray] == 0) continue;
    int hitWood = 0;
    const double at = stopOn(s, ray, k, draws[5][k], &hitWood);
    if (at == -1) continue;
    const double u = draws[4][k];
    const double keptU = poor[k] ? u / s->poorShare : (u - s->poorShare) / (1 - s->poorShare);
    const double f = at / level[k], launch = poor[k] ? s->tanLaunch * poorLaunch : s->tanLaunch;
    const double flown = at * launch * (1 - f) * (1 + s->skew * f);
    const double fall = hasElevation ? elevation[cellAt(s->x + ux[k] * at, s->y + uy[k] * at)] - s->start : 0;
    const double speed =
        s->launch * sqrt(fmin(1, level[k] / s->runCarry)) * pow(s->landing / s->launch, f) * (hitWood ? 0.35 : 0.25) * keptU * keptU;
    const double seconds = sqrt(2 * fmax(0, flown - fall) / 9.80665) + 0.3;
    const double turn = (hitWood ? M_PI : 0) + (hitWood ? 0.6 : 1.1) * draws[2][k];
    const double way = 1.3 * speed * seconds, along = fmax(0, at + way * cos(turn)), right = way * sin(turn);
    stopped[k] = 1;
    endX[k] = s->x + ux[k] * along + uy[k] * right;
    endY[k] = s->y + uy[k] * along - ux[k] * right;
  }
}

static void land(const Stand *s) {
  const double perCarry = s->runFactor / s->runCarry;
  for (int k = 0; k < shots; k++) {
    double x = endX[k], y = endY[k];
    if (!stopped[k]) {
      const double dx = ux[k], dy = uy[k];
      x = s->x + dx * carry[k];
      y = s->y + dy * carry[k];
      int32_t word = words[cellAt(x, y)];
      const int lie = word & 15;
      double cost = s->costPerM[lie];
      const double scale = (1 + s->runSdShare * draws[2][k]) * perCarry * level[k];
      if (scale > 0 && cost < INFINITY) {
        int here = (int)levelRow * lies + lie;
        double bounce = s->bounceM[here], square = s->rollSquare[here], pull = 0, aside = 0;
        if (!isLevel) {
          const double east = (((word >> 12) & 1023) - slopeZero) * slopeStep;
          const double north = ((int)((uint32_t)word >> 22) - slopeZero) * slopeStep;
          const double along = east * dx + north * dy;
          double at = levelRow + rowsPerSlope * along;
          if (at < 0) at = 0;
          else if (at > SLOPES - 1) at = SLOPES - 1;
          const int row = at < SLOPES - 1 ? (int)at : SLOPES - 2;
          const double above = at - row;
          here = row * lies + lie;
          bounce = s->bounceM[here] + above * (s->bounceM[here + lies] - s->bounceM[here]);
          square = s->rollSquare[here] + above * (s->rollSquare[here + lies] - s->rollSquare[here]);
          pull = 2 * slopePull * along;
          aside = s->sideM[lie] * scale * (east * dy - north * dx);
          const double least = leastCost * cost;
          cost += pull;
          if (cost < least) cost = least;
        }
        bounce *= scale;
        double total = bounce + (scale * square) / cost;
        if (total > longestRoll) total = longestRoll;
        const double length = fabs(total);
        double sx = dx, sy = dy;
        if (aside != 0) {
          double q = aside / (length > 1 ? length : 1);
          if (q > mostAside) q = mostAside;
          else if (q < -mostAside) q = -mostAside;
          if (total < 0) q = -q;
          const double norm = 1 / sqrt(1 + q * q);
          sx = (dx + dy * q) * norm;
          sy = (dy - dx * q) * norm;
        }
        double hop = 0;
        if (total < 0) {
          sx = -sx;
          sy = -sy;
          pull = -pull;
        } else if (bounce > 0) {
          hop = fmin(hopShare * bounce, length);
        }
        x += sx * hop;
        y += sy * hop;
        double left = (length - hop) * cost;
        while (left > 0) {
          word = words[cellAt(x, y)];
          const double flat = s->costPerM[word & 15];
          if (flat == INFINITY) break;
          cost = flat + pull;
          if (cost < leastCost * flat) cost = leastCost * flat;
          const double sure = (word >> 4) & 255, step = sure > rollStep ? sure : rollStep, taken = step * cost;
          if (taken >= left) {
            const double whole = left / cost;
            x += sx * whole;
            y += sy * whole;
            break;
          }
          x += sx * step;
          y += sy * step;
          left -= taken + 1e-9;
        }
      }
    }
    x = x < leastX ? leastX : x > mostX ? mostX : x;
    y = y < leastY ? leastY : y > mostY ? mostY : y;
    endX[k] = x;
    endY[k] = y;
    endLie[k] = words[(int)((y - south) * perM) * columns + (int)((x - west) * perM)] & 15;
  }
}

static double seconds(void) {
  struct timespec t;
  clock_gettime(CLOCK_PROCESS_CPUTIME_ID, &t);
  return t.tv_sec + 1e-9 * t.tv_nsec;
}

int main(int argc, char **argv) {
  FILE *file = argc > 1 ? fopen(argv[1], "rb") : NULL;
  if (!file) return 2;
  fseek(file, 0, SEEK_END);
  const long bytes = ftell(file);
  rewind(file);
  input = malloc(bytes);
  if (fread(input, 1, bytes, file) != (size_t)bytes) return 2;
  columns = next(), rows = next(), hasElevation = next(), isLevel = next(), lies = next(), shots = next(), risesteps = next();
  const int standCount = next(), stretchCount = next(), turns = next();
  west = next(), south = next(), perM = next(), leastX = next(), leastY = next(), mostX = next(), mostY = next();
  slopePull = next(), longestRoll = next(), hopShare = next(), leastCost = next(), rollStep = next(), mostAside = next();
  poorWind = next(), shortest = next(), poorLaunch = next(), canopyStep = next(), lowestRise = next(), rowsPerSlope = next();
  levelRow = next(), slopeStep = next(), slopeZero = next();
  if (shots > MOST_SHOTS || lies > LIES || risesteps >= RISES) return 2;
  const int cells = columns * rows;
  words = malloc(cells * sizeof *words);
  elevation = malloc(cells * sizeof *elevation);
  for (int i = 0; i < cells; i++) words[i] = (int32_t)next();
  for (int i = 0; i < cells; i++) elevation[i] = next();
  for (int d = 0; d < 6; d++) {
    draws[d] = malloc(shots * sizeof(double));
    take(draws[d], shots);
  }
  stretches = malloc((stretchCount + 1) * sizeof *stretches);
  for (int i = 0; i < stretchCount; i++) stretches[i] = next();
  stands = calloc(standCount, sizeof *stands);
  for (int i = 0; i < standCount; i++) {
    Stand *s = stands + i;
    take(&s->x, 28);
    take(s->carryShare, risesteps + 1);
    take(s->costPerM, lies);
    take(s->bounceM, SLOPES * lies);
    take(s->rollSquare, SLOPES * lies);
    take(s->sideM, lies);
    for (int r = 0; r < RAYS; r++) s->first[r] = next(), s->count[r] = next();
    s->trunkCount = next();
    s->trunks = input;
    input += 4 * s->trunkCount;
  }
  double best = INFINITY, east = 0, north = 0;
  long sum = 0;
  for (int round = 0; round < 10; round++) {
    const double begun = seconds();
    for (int turn = 0; turn < turns; turn++) {
      for (int i = 0; i < standCount; i++) {
        strike(stands + i);
        if (hasElevation) reach(stands + i);
        else for (int k = 0; k < shots; k++) carry[k] = level[k];
        meet(stands + i);
        land(stands + i);
        if (turn + round == 0)
          for (int k = 0; k < shots; k++) east += endX[k], north += endY[k], sum += endLie[k];
      }
    }
    best = fmin(best, seconds() - begun);
  }
  printf("%.9g %.9g %.9g %ld\n", best, east, north, sum);
  return 0;
}
