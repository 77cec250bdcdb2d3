#!/bin/sh
# What changed in every .lap file from one git revision to another, as Markdown on standard output.
# usage: compare-changes.sh BASE [HEAD]
# Compares with the commit both grew from, so that what others changed meanwhile is left out. Exit code 0: compared,
# whatever was found; 2: trouble. HALFLAP names the command, such as "npx halflap"; `halflap` where it is not set.
set -eu
base=$(git merge-base "${1:?usage: compare-changes.sh BASE [HEAD]}" "${2:-HEAD}")
head=${2:-HEAD}
cd "$(git rev-parse --show-toplevel)"
export base head

git diff --no-renames --name-only -z "$base" "$head" -- '*.lap' | xargs -0 -r -n 1 sh -c '
  old=/dev/null new=/dev/null
  if git cat-file -e "$base:$1" 2>/dev/null; then old=$base:$1; fi
  if git cat-file -e "$head:$1" 2>/dev/null; then new=$head:$1; fi
  printf "## %s\n\n" "$1"
  code=0
  ${HALFLAP:-halflap} compare --as markdown "$old" "$new" || code=$?
  if [ "$code" -gt 2 ]; then exit 255; fi
  printf "\n"
' compare
