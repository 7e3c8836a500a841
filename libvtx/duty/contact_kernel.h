/* Two thick bodies that touch. Internal. */
#ifndef VTX_CONTACT_KERNEL_H
#define VTX_CONTACT_KERNEL_H

/* Incropera, Fundamentals of Heat and Mass Transfer, equation 5.66. */
static inline double contact_temperature(double first_effusivity, double first, double second_effusivity, double second)
{
    return (first_effusivity * first + second_effusivity * second) / (first_effusivity + second_effusivity);
}

#endif
