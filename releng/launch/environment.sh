# SPDX-License-Identifier: EPL-2.0
#
# What releng/run, releng/test and releng/wainscribe share: finding a JDK and Maven, system packages, and building the
# product only when it is stale. Sourced by them, never run. Everything said here goes to stderr.

JAVA_NEEDED=21
MAVEN_NEEDED=3.9.9
MAVEN_FETCHED=3.9.16

case $(uname -s) in
	Darwin) OS=macosx WS=cocoa ;;
	*) OS=linux WS=gtk ;;
esac
case $(uname -m) in
	arm64 | aarch64) ARCH=aarch64 ;;
	*) ARCH=x86_64 ;;
esac

TOOLS=$ROOT/releng/.tools    # fetched Maven, logs, locks
LAUNCH=$ROOT/releng/.launch  # copies of the built product that the scripts start; "current" points to the newest
PRODUCT=$LAUNCH/current

say() {
	printf '%s\n' "$*" >&2
}

die() {
	say "wainscribe: $*"
	exit 2
}

# ---------------------------------------------------------------------------------------------------------------- Java

# Prints the feature version of the JDK in folder $1 without starting it; nothing if it is none.
jdk_version() {
	[ -x "$1/bin/javac" ] && [ -r "$1/release" ] || return 0
	local line
	while IFS= read -r line; do
		case $line in
			JAVA_VERSION=*)
				line=${line#*\"}
				printf '%s' "${line%%[!0-9]*}"
				return
				;;
		esac
	done <"$1/release"
}

# Prints folders that may hold a JDK, the wished-for first.
jdk_places() {
	[ -n "${JAVA_HOME:-}" ] && printf '%s\n' "$JAVA_HOME"
	local java
	java=$(command -v javac || command -v java) && {
		java=$(readlink -f -- "$java" 2>/dev/null || printf '%s' "$java")
		printf '%s\n' "${java%/bin/*}"
	}
	local place
	for place in /usr/lib/jvm/* /usr/java/* /usr/local/java/* /opt/java/* /opt/*jdk* /opt/jdk* \
		"${HOME:-}"/.sdkman/candidates/java/* "${HOME:-}"/.jdks/* /Library/Java/JavaVirtualMachines/*/Contents/Home; do
		[ -d "$place" ] && printf '%s\n' "$place"
	done
}

# Sets JAVA_HOME and WAINSCRIBE_JAVA to a JDK that is new enough.
choose_java() {
	local place version seen=
	while IFS= read -r place; do
		version=$(jdk_version "$place")
		[ -n "$version" ] || continue
		if [ "$version" -ge "$JAVA_NEEDED" ]; then
			export JAVA_HOME=$place WAINSCRIBE_JAVA=$place/bin/java
			return
		fi
		seen="$seen $version"
	done < <(jdk_places)
	die "needs a JDK $JAVA_NEEDED or newer: install one or set JAVA_HOME to it (found:${seen:- none})"
}

# --------------------------------------------------------------------------------------------------------------- Maven

# True if version $1 is not below version $2 (numbers and dots).
not_below() {
	[ "$(printf '%s\n%s\n' "$2" "$1" | sort -t. -k1,1n -k2,2n -k3,3n | head -n 1)" = "$2" ]
}

# Sets MVN to a Maven that is new enough, fetching one as an ordinary artifact if the system's is too old.
choose_maven() {
	MVN=$TOOLS/apache-maven-$MAVEN_FETCHED/bin/mvn
	[ -x "$MVN" ] && return
	local system version
	system=$(command -v mvn) || die "needs Maven 3.8 or newer on the PATH"
	version=$("$system" -version 2>/dev/null | sed -n 's/.*Apache Maven \([0-9][0-9.]*\).*/\1/p' | head -n 1)
	case $version in
		3.*) not_below "$version" "$MAVEN_NEEDED" && MVN=$system && return ;;
	esac
	say "Maven $version does not suit the build (needs $MAVEN_NEEDED or newer, below 4): fetching $MAVEN_FETCHED once"
	local place=$TOOLS/fetch.$$
	mkdir -p "$place"
	# in an empty folder, because an older Maven must not read this project; the plug-in leaves a stray folder there
	if ! (cd "$place" && "$system" -B -q org.apache.maven.plugins:maven-dependency-plugin:3.8.1:unpack \
		"-Dartifact=org.apache.maven:apache-maven:$MAVEN_FETCHED:zip:bin" "-DoutputDirectory=$place/out") \
		>"$TOOLS/maven-fetch.log" 2>&1; then
		rm -rf "$place"
		die "could not fetch Maven $MAVEN_FETCHED, see $TOOLS/maven-fetch.log"
	fi
	chmod +x "$place/out/apache-maven-$MAVEN_FETCHED/bin/mvn"
	mv "$place/out/apache-maven-$MAVEN_FETCHED" "$TOOLS/"
	rm -rf "$place"
}

# Runs Maven on the project: the log goes to file $1, module by module progress and test results to stderr.
# With SHOW_TESTS=yes test results go to stdout as well as into the log.
maven() {
	local log=$1 code
	shift
	(cd "$ROOT" && "$MVN" -B "$@") </dev/null 2>&1 | tee "$log" | progress
	code=${PIPESTATUS[0]}
	if [ "$code" -ne 0 ]; then
		grep -E '^\[ERROR\]|^\[FATAL\]' "$log" | grep -vE '^\[ERROR\] *$|\$\{osgi.platform\}' | head -n "${ERROR_LINES:-60}" >&2
		say "The build failed; the whole log is $log"
	fi
	return "$code"
}

progress() {
	awk -v tests="${SHOW_TESTS:-no}" '
		/^\[INFO\] Downloaded from/ || /^Downloaded from/ {
			if (++fetched % 100 == 0) { printf "  fetched %d files\n", fetched > "/dev/stderr"; fflush() }
			next
		}
		/^\[INFO\] Building .*\[[0-9]+\/[0-9]+\]$/ {
			count = $NF; line = $0
			sub(/^\[INFO\] Building /, "", line); sub(/ [^ ]+ +\[[0-9]+\/[0-9]+\]$/, "", line)
			printf "%s %s\n", count, line > "/dev/stderr"; fflush("/dev/stderr")
		}
		tests == "yes" && /Tests run:/ { sub(/^\[[A-Z]+\] */, ""); print; fflush() }
	'
}

# ------------------------------------------------------------------------------------------------------------ packages

# Sees that the named tools are there: "gtk" for the window toolkit, anything else is a program on the PATH.
need() {
	[ "$OS" = linux ] || return 0
	local tool package missing=()
	for tool in "$@"; do
		case $tool in
			gtk)
				ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0' || /sbin/ldconfig -p 2>/dev/null | grep -q 'libgtk-3\.so\.0' ||
					missing+=(libgtk-3-0)
				;;
			Xvfb) command -v Xvfb >/dev/null || missing+=(xvfb) ;;
			*) command -v "$tool" >/dev/null || missing+=("$tool") ;;
		esac
	done
	[ ${#missing[@]} -gt 0 ] || return 0
	if [ "$(id -u)" = 0 ] && command -v apt-get >/dev/null; then
		say "Installing ${missing[*]}"
		mkdir -p "$TOOLS"
		(
			export DEBIAN_FRONTEND=noninteractive
			apt-get -q update
			# some newer systems have given the library another name
			for package in "${missing[@]}"; do
				apt-get -q -y --no-install-recommends install "$package" || apt-get -q -y --no-install-recommends install "${package}t64" || exit 1
			done
		) >"$TOOLS/packages.log" 2>&1 && return 0
		die "could not install ${missing[*]}, see $TOOLS/packages.log"
	fi
	die "missing system packages, install them first: ${missing[*]}"
}

# --------------------------------------------------------------------------------------------------------------- build

# Runs the rest of the arguments while no other script of this working copy builds.
exclusively() {
	mkdir -p "$TOOLS"
	if command -v flock >/dev/null; then
		(
			flock -n 9 || { say "Waiting for another build of this working copy"; flock 9; }
			# the lock belongs to this shell alone: a process that outlives it must not keep it
			"$@" 9>&-
		) 9>"$TOOLS/build.lock"
	else
		until mkdir "$TOOLS/build.lock.d" 2>/dev/null; do sleep 1; done
		local code=0
		"$@" || code=$?
		rmdir "$TOOLS/build.lock.d"
		return "$code"
	fi
}

# True if there is no product to start, or a source file is newer than the start of its build.
stale() {
	[ -e "$PRODUCT/built" ] || return 0
	local newer
	newer=$(cd "$ROOT" && find pom.xml .mvn bundles features releng/wainscribe.product releng/wainscribe.target \
		\( -name target -o -name src_test -o -name .jqwik-database -o -name 'wainscribe.*.tests' \) -prune -o \
		-newer "$PRODUCT/built" \( -type f -o -type d -path '*/src*' \) -print 2>/dev/null | head -n 1)
	[ -n "$newer" ]
}

# Builds the product for this machine.
build_product() {
	stale || return 0 # another script may have built it while this one waited
	choose_maven
	say "Building Wainscribe (the first time fetches some 250 MB)"
	local started=$TOOLS/started.$$
	: >"$started"
	rm -rf "$ROOT/releng/wainscribe.product/target/products"
	if maven "$TOOLS/build.log" package "-Dlaunch.os=$OS" "-Dlaunch.ws=$WS" "-Dlaunch.arch=$ARCH"; then
		put_in_place "$started"
	else
		rm -f "$started"
		return 2
	fi
}

# Puts a copy of the product just built in place, which later builds leave alone. File $1 is as old as the build's start.
put_in_place() {
	local built=$ROOT/releng/wainscribe.product/target/products/wainscribe/$OS/$WS/$ARCH
	local copy old
	copy=$LAUNCH/$(date +%Y%m%d%H%M%S).$$
	mkdir -p "$LAUNCH"
	# one folder lies there, which on macOS is an .app
	cp -a "$built"/* "$copy" || return 2
	mv "$1" "$copy/built"
	ln -s "${copy##*/}" "$LAUNCH/next.$$"
	rename "$LAUNCH/next.$$" "$PRODUCT"
	# the copy before this one may still be running; older ones are not kept
	find "$LAUNCH" -mindepth 1 -maxdepth 1 -type d -name '2*' | sort | sed '$d' | sed '$d' |
		while IFS= read -r old; do rm -rf "$old"; done
}

# Puts link $1 in the place of link $2 in one step.
rename() {
	mv -fT "$1" "$2" 2>/dev/null || mv -fh "$1" "$2"
}

# Sees that the product can be started and is as new as its sources.
ensure_product() {
	stale || return 0
	exclusively build_product || exit 2
}
