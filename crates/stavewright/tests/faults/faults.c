/*
 * A library to preload (LD_PRELOAD): it stands between the program and the C library and lets the disk
 * go wrong at a chosen call. Only calls that change what is on the disk are counted: writing into a
 * regular file, flushing, making, renaming, removing.
 *
 *   FAULTS_LOG=FILE   writes the name of each counted call on a line, by which a run is counted
 *   FAULTS_KILL=N     the Nth call kills the process: a write after half of its bytes, any other before
 *   FAULTS_FULL=N     from the Nth call on the disk is full: what needs room fails with ENOSPC
 *   FAULTS_NO_EXCHANGE=1   the disk cannot exchange two names
 *   FAULTS_MEDDLE=END somebody writes into the file called as the second name and END, in the last moment
 *                     before two names are exchanged for the first time
 */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <errno.h>
#include <fcntl.h>
#include <signal.h>
#include <stdarg.h>
#include <stdatomic.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>
#include <sys/stat.h>
#include <sys/syscall.h>
#include <unistd.h>

#define NEXT(name) __typeof__(&name) next = (__typeof__(&name))dlsym(RTLD_NEXT, #name)

static atomic_int calls;

static int chosen(const char *variable) {
    const char *text = getenv(variable);
    return text ? atoi(text) : 0;
}

static void die(void) {
    syscall(SYS_kill, getpid(), SIGKILL);
    for (;;) pause();
}

/* Counts a call; returns whether the disk is full for it. A kill comes at once, unless there are bytes
 * of which half are to be written first. */
static int faulty(const char *name, int needs_room, int descriptor, const void *bytes, size_t length) {
    int call = atomic_fetch_add(&calls, 1) + 1;
    const char *log = getenv("FAULTS_LOG");
    if (log) {
        int file = syscall(SYS_openat, AT_FDCWD, log, O_WRONLY | O_CREAT | O_APPEND, 0666);
        syscall(SYS_write, file, name, strlen(name));
        syscall(SYS_write, file, "\n", 1);
        syscall(SYS_close, file);
    }
    if (call == chosen("FAULTS_KILL")) {
        if (bytes) syscall(SYS_write, descriptor, bytes, length / 2);
        die();
    }
    int full = chosen("FAULTS_FULL");
    return needs_room && full && call >= full;
}

#define FULL (errno = ENOSPC, -1)

ssize_t write(int descriptor, const void *bytes, size_t length) {
    NEXT(write);
    struct stat about;
    if (fstat(descriptor, &about) == 0 && S_ISREG(about.st_mode) &&
        faulty("write", 1, descriptor, bytes, length))
        return FULL;
    return next(descriptor, bytes, length);
}

int open64(const char *path, int flags, ...) {
    NEXT(open64);
    va_list rest;
    va_start(rest, flags);
    mode_t mode = flags & O_CREAT ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    return flags & O_CREAT && faulty("open", 1, -1, NULL, 0) ? FULL : next(path, flags, mode);
}

int fsync(int descriptor) {
    NEXT(fsync);
    return faulty("fsync", 1, -1, NULL, 0) ? FULL : next(descriptor);
}

int fdatasync(int descriptor) {
    NEXT(fdatasync);
    return faulty("fdatasync", 1, -1, NULL, 0) ? FULL : next(descriptor);
}

int mkdir(const char *path, mode_t mode) {
    NEXT(mkdir);
    return faulty("mkdir", 1, -1, NULL, 0) ? FULL : next(path, mode);
}

int rename(const char *from, const char *to) {
    NEXT(rename);
    faulty("rename", 0, -1, NULL, 0);
    return next(from, to);
}

/* Somebody else writes "meddled" into a file. */
static void meddle(const char *name, const char *end) {
    char path[4096];
    snprintf(path, sizeof path, "%s%s", name, end);
    int file = syscall(SYS_openat, AT_FDCWD, path, O_WRONLY | O_TRUNC);
    syscall(SYS_write, file, "meddled", 7);
    syscall(SYS_close, file);
}

int renameat2(int from_folder, const char *from, int to_folder, const char *to, unsigned flags) {
    NEXT(renameat2);
    if (getenv("FAULTS_NO_EXCHANGE") && flags == RENAME_EXCHANGE) return errno = EINVAL, -1;
    faulty("renameat2", 0, -1, NULL, 0);
    static atomic_int exchanges;
    const char *end = getenv("FAULTS_MEDDLE");
    if (end && flags == RENAME_EXCHANGE && atomic_fetch_add(&exchanges, 1) == 0) meddle(to, end);
    return next(from_folder, from, to_folder, to, flags);
}

int linkat(int from_folder, const char *from, int to_folder, const char *to, int flags) {
    NEXT(linkat);
    return faulty("linkat", 1, -1, NULL, 0) ? FULL : next(from_folder, from, to_folder, to, flags);
}

int unlink(const char *path) {
    NEXT(unlink);
    faulty("unlink", 0, -1, NULL, 0);
    return next(path);
}

int rmdir(const char *path) {
    NEXT(rmdir);
    faulty("rmdir", 0, -1, NULL, 0);
    return next(path);
}

int unlinkat(int folder, const char *path, int flags) {
    NEXT(unlinkat);
    faulty("unlinkat", 0, -1, NULL, 0);
    return next(folder, path, flags);
}
