/* Version of the library: the only place where the number is written.
 *
 * Not the shared library's interface number: that one is in configure.ac.
 * See also: DEVELOPERS.md, "Releases and interface numbers". */
#ifndef VTX_VERSION_H
#define VTX_VERSION_H

#include <vtx/status.h>

#define VTX_VERSION_MAJOR 0
#define VTX_VERSION_MINOR 1
#define VTX_VERSION_PATCH 0
#define VTX_VERSION "0.1.0"

#ifdef __cplusplus
extern "C" {
#endif

/* Version of the library that is running, as text; compare it with VTX_VERSION of the header.
 *
 * status    none: returns static text, cannot fail
 */
VTX_API const char *vtx_version(void);

/* Version of the library that is running, as one number: 10000 major + 100 minor + patch.
 *
 * status    none: returns a number, cannot fail
 */
VTX_API int32_t vtx_version_number(void);

#ifdef __cplusplus
}
#endif

#endif
