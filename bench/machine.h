/* What a benchmark ran on, for the head of its table. */
#ifndef VTX_BENCH_MACHINE_H
#define VTX_BENCH_MACHINE_H

#include <stdio.h>

/* Lines of text: machine, vector unit, compiler with its flags, version of libvtx. */
void print_machine(void);

/* The same as members of a JSON object, the comma behind each included. */
void print_machine_json(FILE *json);

/* Whether the vector unit is there that a program is tied to, which then defines its name as BENCH_VECTORS. */
int vectors_run_here(void);

#endif
