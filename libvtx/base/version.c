/* Version of the running library. */
#include <vtx/version.h>

const char *vtx_version(void) { return VTX_VERSION; }

int32_t vtx_version_number(void)
{
    return 10000 * VTX_VERSION_MAJOR + 100 * VTX_VERSION_MINOR + VTX_VERSION_PATCH;
}
