#!/usr/bin/env bash
# `npm test`: unit and published checks, build, browser tests beside types and lint; the last line sums the tests up.
set -uo pipefail
cd "$(dirname "$0")/.."

results=$(mktemp -d)
trap 'rm -rf "$results"' EXIT
failed_steps=()

say() { printf '\n== %s\n' "$*"; }

step() {
  local name=$1
  shift
  say "$name"
  local begun=$SECONDS
  if "$@"; then
    echo "$name: done in $((SECONDS - begun)) s"
  else
    echo "$name: FAILED after $((SECONDS - begun)) s"
    failed_steps+=("$name")
  fi
}

# Chromium runs the browser tests; pdftotext and pdftoppm read the printed card.
have_tools() { command -v chromium >/dev/null && command -v pdftotext >/dev/null && command -v pdftoppm >/dev/null; }

install_tools() {
  have_tools && return 0
  local as_root=()
  if [ "$(id -u)" -ne 0 ]; then
    if ! sudo -n true 2>/dev/null; then
      echo 'Chromium or poppler-utils is missing and cannot be installed without root.'
      echo 'Run "sudo apt-get install chromium poppler-utils", then "npm test" again.'
      return 1
    fi
    as_root=(sudo -n env)
  fi
  export DEBIAN_FRONTEND=noninteractive
  "${as_root[@]}" apt-get -q -y update && "${as_root[@]}" apt-get -q -y install chromium poppler-utils >/dev/null && have_tools
}

vitest() {
  local name=$1
  shift
  # A run that hangs must not hang the whole.
  timeout 1200 npx --no-install vitest run --reporter=default --reporter=json --outputFile.json="$results/$name.json" "$@"
}

if [ ! -d node_modules ]; then
  say 'installing the packages'
  npm ci --no-audit --no-fund || exit 1
fi

step 'browser and PDF tools' install_tools
# The browser tests wait more than they work: types and lint fill the gaps beside them, and give way.
begin_types_and_lint() {
  (
    nice -n 10 npm run --silent types >"$results/types.txt" 2>&1
    typed=$?
    nice -n 10 npm run --silent lint >>"$results/types.txt" 2>&1 && [ $typed -eq 0 ]
  ) &
  types_and_lint=$!
}

end_types_and_lint() {
  wait "$types_and_lint"
  local code=$?
  cat "$results/types.txt"
  return $code
}

# Told, never a failure: what others publish overnight makes no change of ours wrong, and CI may be offline.
say 'dependencies'
timeout 30 npx --no-install tsx tests/audit/run.ts --tell || echo 'Dependencies: not asked.'

step 'unit and published tests' vitest unit
step 'build' npm run --silent build
begin_types_and_lint
step 'browser tests' vitest browser --config tests/browser/vitest.config.ts

step 'types and lint, begun before the browser tests' end_types_and_lint

say 'summary'
if [ ${#failed_steps[@]} -gt 0 ]; then
  printf 'failed: %s\n' "${failed_steps[@]}"
fi
# Last line: "N passed, N failed".
npx --no-install tsx tests/count-results.ts "$results/unit.json" "$results/browser.json"
counted=$?
[ ${#failed_steps[@]} -eq 0 ] && [ $counted -eq 0 ]
