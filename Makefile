# Stavewright. `make help` lists what can be made.
#
# Everything is built with one profile (dev, with optimised dependencies) and one set of features,
# so that the typesetter is compiled once for `make run`, `make test` and `make bench` alike. The
# test tools switch on a few features of shared dependencies; therefore `run` builds one small test
# along with the program, and `test` includes the examples in the docs build.

PATTERN ?= patterns/harbour-bread-basket.toml
CARGO   ?= cargo

.PHONY: help setup run test bench

help:
	@echo "make run     draft $(PATTERN) into out/ (another: make run PATTERN=my.toml)"
	@echo "make test    formatting, lints, docs and all tests"
	@echo "make bench   measure the targets (computing, drafting with and without sheets)"
	@echo "make setup   install the tools that are missing; run and test do it by themselves"

setup:
	@scripts/setup

run: setup
	$(CARGO) build --workspace --bin stavewright --test published_weave
	@target=$${CARGO_TARGET_DIR:-target}; $$target/debug/stavewright draft $(PATTERN)

test: setup
	$(CARGO) fmt --all --check
	$(CARGO) clippy --workspace --all-targets -- -D warnings
	RUSTDOCFLAGS="-D warnings" $(CARGO) doc --no-deps --workspace --lib --bins --examples
	$(CARGO) test --doc --workspace
	@if $(CARGO) nextest --version >/dev/null 2>&1; then \
		echo "$(CARGO) nextest run --workspace"; $(CARGO) nextest run --workspace; \
	else \
		echo "$(CARGO) test --workspace --lib --bins --tests"; $(CARGO) test --workspace --lib --bins --tests; \
	fi

# Our own crates are optimised here as in a release; their dependencies are so anyway.
bench: setup
	$(CARGO) --config profile.dev.opt-level=3 bench --profile dev --workspace
