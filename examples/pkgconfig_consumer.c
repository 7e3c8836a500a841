/* A program of somebody else, built with what pkg-config says and nothing more:
 *   cc pkgconfig_consumer.c $(pkg-config --cflags --libs vtx) -o pkgconfig_consumer */
#include <stdio.h>
#include <string.h>

#include <vtx.h>

int main(void)
{
    double saturation, dead_end;
    if (strcmp(vtx_version(), VTX_VERSION) != 0) {
        fprintf(stderr, "header %s, library %s\n", VTX_VERSION, vtx_version());
        return 1;
    }
    if (vtx_water_saturation_pressure(293.15, &saturation) != VTX_OK
        || vtx_dead_end_pressure(1.4, 2e-6, 5e-6, 7e5, 101325, &dead_end) != VTX_OK)
        return 1;
    printf("libvtx %s\n", vtx_version());
    printf("water boils at 20 degC below %.1f Pa\n", saturation);
    printf("a blocked outlet stands at %.3f bar\n", dead_end / 1e5);
    return 0;
}
