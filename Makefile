# Stavewright. `make help` lists what can be made.
#
# Everything is built with one profile (dev, with optimised dependencies) and one set of features,
# so that all is compiled once for `make run`, `make test` and `make bench` alike. What the test tools
# switch on in the typesetter's dependencies is switched on for the program too (see
# crates/stavewright/Cargo.toml); for the few others `run` builds one small test along with the
# program, and `test` includes the examples in the docs build.

PATTERN ?= patterns/harbour-bread-basket.toml
CARGO   ?= cargo
# What `make dist` builds with: release takes minutes and is what to hand out; dev is for a trial.
PROFILE ?= release
TARGET   = $(abspath $(or $(CARGO_TARGET_DIR),target))
PROGRAM  = $(TARGET)/debug/stavewright

.PHONY: help setup page house pictures run test test-long fuzz bench deny licences dist try-dist

help:
	@echo "make run     draft $(PATTERN) into out/ and open it on the bench (another: make run PATTERN=my.toml)"
	@echo "make test    formatting, rules of the house, lints, docs and all tests, in the browser too"
	@echo "make house   the rules of the house alone: circles of imports, lengths, constructors, idle functions"
	@echo "make page    build the page that the bench serves; run and test do it by themselves"
	@echo "make test-long   a thousand extreme patterns through every command (hours)"
	@echo "make fuzz    mangled bytes and extreme patterns, MINUTES=30 in all"
	@echo "make pictures  the pictures of the README and the guide anew, made by the program"
	@echo "make bench   measure the targets (computing, drafting with and without sheets)"
	@echo "make deny     ask cargo-deny, if it is at hand, for licences, bans and sources (deny.toml)"
	@echo "make licences write the list of parts anew that \`stavewright licences\` prints"
	@echo "make dist     an archive that runs without Rust and Node, in target/dist (for a trial: PROFILE=dev)"
	@echo "make try-dist unpack it into an empty root and use it there"
	@echo "make setup   install the tools that are missing; run and test do it by themselves"

setup:
	@scripts/setup

# The page's parts, as its lock file names them.
web/node_modules/.package-lock.json: web/package-lock.json | setup
	cd web && npm ci --no-audit --no-fund
	@touch $@

page: web/node_modules/.package-lock.json
	cd web && npm run --silent build

house: setup
	node --test scripts/house/house.test.mjs
	node scripts/house/house.mjs

# A finding that says stop (exit status 1) is no reason not to open the bench.
run: setup page
	$(CARGO) build --workspace --bin stavewright --test published_weave
	@$(PROGRAM) draft $(PATTERN) || [ $$? -eq 1 ]
	@exec $(PROGRAM) bench $(PATTERN)

test: setup page
	$(CARGO) fmt --all --check
	@$(MAKE) --no-print-directory house
	$(CARGO) clippy --workspace --all-targets -- -D warnings
	RUSTDOCFLAGS="-D warnings" $(CARGO) doc --no-deps --workspace --lib --bins --examples
	$(CARGO) build --workspace --bins --tests
	cd web && npm run --silent check && STAVEWRIGHT=$(PROGRAM) npm test
	$(CARGO) test --doc --workspace
	@if $(CARGO) nextest --version >/dev/null 2>&1; then \
		echo "$(CARGO) nextest run --workspace"; $(CARGO) nextest run --workspace; \
	else \
		echo "$(CARGO) test --workspace --lib --bins --tests"; $(CARGO) test --workspace --lib --bins --tests; \
	fi

test-long: setup page
	$(CARGO) build --workspace --bins
	PROPTEST_CASES=5000 $(CARGO) test -p basket --test any_pattern
	STAVEWRIGHT_KILLS=300 $(CARGO) test -p workshop --test killed
	STAVEWRIGHT_EXTREME=$(or $(COUNT),1000) $(CARGO) test -p fuzz --test extreme

# Cases that bring something down are kept in fuzz/found and tried again by the tests.
MINUTES ?= 30
fuzz: setup page
	$(CARGO) build --workspace --bins
	$(dir $(PROGRAM))fuzz-long $$(($(MINUTES) * 60 / 7))

# With the program as `make run` builds it.
pictures: setup page
	$(CARGO) build --workspace --bin stavewright --test published_weave
	node scripts/pictures/pictures.mjs $(PROGRAM)

# Our own crates are optimised here as in a release; their dependencies are so anyway.
bench: setup
	$(CARGO) --config profile.dev.opt-level=3 bench --profile dev --workspace

# `make test` holds the same rules against what cargo says (crates/stavewright/tests/licences.rs).
deny:
	@if $(CARGO) deny --version >/dev/null 2>&1; then \
		$(CARGO) deny check licenses bans sources; \
	else \
		echo "cargo-deny is not at hand; asking our own test"; $(CARGO) test -p stavewright --test licences; \
	fi

licences:
	STAVEWRIGHT_UPDATE=1 $(CARGO) test -p stavewright --test licences

# The page is put into the program, whatever the profile.
dist: setup page
	$(CARGO) build --locked --profile $(PROFILE) -p stavewright --bin stavewright --features rust-embed/debug-embed
	scripts/dist/pack $(TARGET)/$(if $(filter dev,$(PROFILE)),debug,$(PROFILE))/stavewright

try-dist:
	scripts/dist/try $(lastword $(sort $(wildcard $(TARGET)/dist/*.tar.gz)))
