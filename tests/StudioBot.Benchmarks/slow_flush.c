/* Preloaded: counts every flush to the disk and makes each take longer, as a slow disk would.
   FLUSH_COUNT names a file of eight bytes that holds the count; FLUSH_DELAY_US is how much longer. */
#define _GNU_SOURCE
#include <dlfcn.h>
#include <fcntl.h>
#include <stdlib.h>
#include <sys/mman.h>
#include <time.h>
#include <unistd.h>

static long *count;
static long delay;

__attribute__((constructor)) static void begin(void)
{
    const char *path = getenv("FLUSH_COUNT"), *longer = getenv("FLUSH_DELAY_US");
    delay = longer ? atol(longer) : 0;
    int file = path ? open(path, O_RDWR) : -1;
    void *page = file >= 0 ? mmap(0, sizeof *count, PROT_READ | PROT_WRITE, MAP_SHARED, file, 0) : MAP_FAILED;
    count = page == MAP_FAILED ? 0 : page;
}

static void flushed(void)
{
    if (count)
        __atomic_add_fetch(count, 1, __ATOMIC_RELAXED);
    struct timespec wait = { delay / 1000000, delay % 1000000 * 1000 };
    if (delay)
        nanosleep(&wait, 0);
}

int fsync(int file)
{
    static int (*real)(int);
    if (!real)
        real = (int (*)(int))dlsym(RTLD_NEXT, "fsync");
    flushed();
    return real(file);
}

int fdatasync(int file)
{
    static int (*real)(int);
    if (!real)
        real = (int (*)(int))dlsym(RTLD_NEXT, "fdatasync");
    flushed();
    return real(file);
}
