/* Batch forms of laws.h. Written by build-aux/generate. */
#include <vtx/laws.h>

#include "../base/batch.h"

static ALWAYS_INLINE vtx_status first_law_residual_item(const struct batch *b, size_t i)
{
    double residual_room;
    double *const residual = batch_place(b, 0, i, &residual_room, sizeof residual_room, _Alignof(double));
    const vtx_status answer = vtx_first_law_residual(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), residual);
    batch_move(b, 0, i, residual, &residual_room, sizeof residual_room);
    return answer;
}

vtx_status vtx_first_law_residual_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_temperature, ptrdiff_t hot_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *residual, ptrdiff_t residual_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_temperature, cold_temperature_stride },
        { hot_temperature, hot_temperature_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { residual, residual_stride, 0, sizeof *residual } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, first_law_residual_item, status, failed);
}

static ALWAYS_INLINE vtx_status hot_temperature_from_balance_item(const struct batch *b, size_t i)
{
    double hot_temperature_room;
    double *const hot_temperature = batch_place(b, 0, i, &hot_temperature_room, sizeof hot_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_hot_temperature_from_balance(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), hot_temperature);
    batch_move(b, 0, i, hot_temperature, &hot_temperature_room, sizeof hot_temperature_room);
    return answer;
}

vtx_status vtx_hot_temperature_from_balance_batch(size_t n, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *hot_temperature,
        ptrdiff_t hot_temperature_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_temperature, inlet_temperature_stride },
        { cold_temperature, cold_temperature_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { hot_temperature, hot_temperature_stride, 0, sizeof *hot_temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, hot_temperature_from_balance_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status cold_fraction_from_temperatures_item(const struct batch *b, size_t i)
{
    double cold_fraction_room;
    double *const cold_fraction = batch_place(b, 0, i, &cold_fraction_room, sizeof cold_fraction_room,
        _Alignof(double));
    const vtx_status answer = vtx_cold_fraction_from_temperatures(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), cold_fraction);
    batch_move(b, 0, i, cold_fraction, &cold_fraction_room, sizeof cold_fraction_room);
    return answer;
}

vtx_status vtx_cold_fraction_from_temperatures_batch(size_t n, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, double *cold_fraction,
        ptrdiff_t cold_fraction_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { inlet_temperature, inlet_temperature_stride },
        { cold_temperature, cold_temperature_stride }, { hot_temperature, hot_temperature_stride } };
    const struct batch_output out[] = { { cold_fraction, cold_fraction_stride, 0, sizeof *cold_fraction } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cold_fraction_from_temperatures_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status refrigeration_capacity_item(const struct batch *b, size_t i)
{
    double capacity_room;
    double *const capacity = batch_place(b, 0, i, &capacity_room, sizeof capacity_room, _Alignof(double));
    const vtx_status answer = vtx_refrigeration_capacity(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), capacity);
    batch_move(b, 0, i, capacity, &capacity_room, sizeof capacity_room);
    return answer;
}

vtx_status vtx_refrigeration_capacity_batch(size_t n, const double *cold_mass_flow, ptrdiff_t cold_mass_flow_stride,
        const double *heat_capacity, ptrdiff_t heat_capacity_stride, const double *reference_temperature,
        ptrdiff_t reference_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        double *capacity, ptrdiff_t capacity_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { cold_mass_flow, cold_mass_flow_stride },
        { heat_capacity, heat_capacity_stride }, { reference_temperature, reference_temperature_stride },
        { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { capacity, capacity_stride, 0, sizeof *capacity } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, refrigeration_capacity_item, status,
        failed);
}

static ALWAYS_INLINE vtx_status entropy_generation_item(const struct batch *b, size_t i)
{
    double entropy_generation_room;
    double *const entropy_generation = batch_place(b, 0, i, &entropy_generation_room, sizeof entropy_generation_room,
        _Alignof(double));
    const vtx_status answer = vtx_entropy_generation(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i),
        batch_get(b, 8, i), entropy_generation);
    batch_move(b, 0, i, entropy_generation, &entropy_generation_room, sizeof entropy_generation_room);
    return answer;
}

vtx_status vtx_entropy_generation_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *entropy_generation, ptrdiff_t entropy_generation_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride }, { gas_constant, gas_constant_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride },
        { hot_pressure, hot_pressure_stride }, { hot_temperature, hot_temperature_stride },
        { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = {
        { entropy_generation, entropy_generation_stride, 0, sizeof *entropy_generation } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, entropy_generation_item, status, failed);
}

static ALWAYS_INLINE vtx_status second_law_limit_item(const struct batch *b, size_t i)
{
    double cold_temperature_room;
    double *const cold_temperature = batch_place(b, 0, i, &cold_temperature_room, sizeof cold_temperature_room,
        _Alignof(double));
    const vtx_status answer = vtx_second_law_limit(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), cold_temperature);
    batch_move(b, 0, i, cold_temperature, &cold_temperature_room, sizeof cold_temperature_room);
    return answer;
}

vtx_status vtx_second_law_limit_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *cold_temperature, ptrdiff_t cold_temperature_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_pressure, cold_pressure_stride },
        { hot_pressure, hot_pressure_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { cold_temperature, cold_temperature_stride, 0, sizeof *cold_temperature } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, second_law_limit_item, status, failed);
}

static ALWAYS_INLINE vtx_status isentropic_drop_item(const struct batch *b, size_t i)
{
    double drop_room;
    double *const drop = batch_place(b, 0, i, &drop_room, sizeof drop_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_drop(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), drop);
    batch_move(b, 0, i, drop, &drop_room, sizeof drop_room);
    return answer;
}

vtx_status vtx_isentropic_drop_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        double *drop, ptrdiff_t drop_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_pressure, cold_pressure_stride } };
    const struct batch_output out[] = { { drop, drop_stride, 0, sizeof *drop } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_drop_item, status, failed);
}

static ALWAYS_INLINE vtx_status ideal_vortex_item(const struct batch *b, size_t i)
{
    vtx_vortex vortex_room;
    vtx_vortex *const vortex = batch_place(b, 0, i, &vortex_room, sizeof vortex_room, _Alignof(vtx_vortex));
    const vtx_status answer = vtx_ideal_vortex(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), vortex);
    batch_move(b, 0, i, vortex, &vortex_room, sizeof vortex_room);
    return answer;
}

vtx_status vtx_ideal_vortex_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *hot_pressure, ptrdiff_t hot_pressure_stride, vtx_vortex *vortex, ptrdiff_t vortex_stride,
        int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_pressure, cold_pressure_stride },
        { hot_pressure, hot_pressure_stride } };
    const struct batch_output out[] = { { vortex, vortex_stride, 0, sizeof *vortex } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, ideal_vortex_item, status, failed);
}

static ALWAYS_INLINE vtx_status flow_exergy_item(const struct batch *b, size_t i)
{
    double exergy_room;
    double *const exergy = batch_place(b, 0, i, &exergy_room, sizeof exergy_room, _Alignof(double));
    const vtx_status answer = vtx_flow_exergy(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), exergy);
    batch_move(b, 0, i, exergy, &exergy_room, sizeof exergy_room);
    return answer;
}

vtx_status vtx_flow_exergy_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *pressure, ptrdiff_t pressure_stride,
        const double *temperature, ptrdiff_t temperature_stride, const double *ambient_pressure,
        ptrdiff_t ambient_pressure_stride, const double *ambient_temperature, ptrdiff_t ambient_temperature_stride,
        double *exergy, ptrdiff_t exergy_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride }, { gas_constant, gas_constant_stride },
        { pressure, pressure_stride }, { temperature, temperature_stride },
        { ambient_pressure, ambient_pressure_stride }, { ambient_temperature, ambient_temperature_stride } };
    const struct batch_output out[] = { { exergy, exergy_stride, 0, sizeof *exergy } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, flow_exergy_item, status, failed);
}

static ALWAYS_INLINE vtx_status exergy_balance_item(const struct batch *b, size_t i)
{
    vtx_exergy_account account_room;
    vtx_exergy_account *const account = batch_place(b, 0, i, &account_room, sizeof account_room,
        _Alignof(vtx_exergy_account));
    const vtx_status answer = vtx_exergy_balance(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i),
        batch_get(b, 8, i), batch_get(b, 9, i), batch_get(b, 10, i), account);
    batch_move(b, 0, i, account, &account_room, sizeof account_room);
    return answer;
}

vtx_status vtx_exergy_balance_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *inlet_pressure,
        ptrdiff_t inlet_pressure_stride, const double *inlet_temperature, ptrdiff_t inlet_temperature_stride,
        const double *cold_pressure, ptrdiff_t cold_pressure_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *hot_pressure, ptrdiff_t hot_pressure_stride,
        const double *hot_temperature, ptrdiff_t hot_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, const double *ambient_pressure, ptrdiff_t ambient_pressure_stride,
        const double *ambient_temperature, ptrdiff_t ambient_temperature_stride, vtx_exergy_account *account,
        ptrdiff_t account_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride }, { gas_constant, gas_constant_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { cold_pressure, cold_pressure_stride }, { cold_temperature, cold_temperature_stride },
        { hot_pressure, hot_pressure_stride }, { hot_temperature, hot_temperature_stride },
        { cold_fraction, cold_fraction_stride }, { ambient_pressure, ambient_pressure_stride },
        { ambient_temperature, ambient_temperature_stride } };
    const struct batch_output out[] = { { account, account_stride, 0, sizeof *account } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, exergy_balance_item, status, failed);
}

static ALWAYS_INLINE vtx_status isentropic_temperature_efficiency_item(const struct batch *b, size_t i)
{
    double efficiency_room;
    double *const efficiency = batch_place(b, 0, i, &efficiency_room, sizeof efficiency_room, _Alignof(double));
    const vtx_status answer = vtx_isentropic_temperature_efficiency(batch_get(b, 0, i), batch_get(b, 1, i),
        batch_get(b, 2, i), batch_get(b, 3, i), batch_get(b, 4, i), efficiency);
    batch_move(b, 0, i, efficiency, &efficiency_room, sizeof efficiency_room);
    return answer;
}

vtx_status vtx_isentropic_temperature_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, double *efficiency,
        ptrdiff_t efficiency_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_pressure, cold_pressure_stride },
        { cold_temperature, cold_temperature_stride } };
    const struct batch_output out[] = { { efficiency, efficiency_stride, 0, sizeof *efficiency } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, isentropic_temperature_efficiency_item,
        status, failed);
}

static ALWAYS_INLINE vtx_status adiabatic_efficiency_item(const struct batch *b, size_t i)
{
    double efficiency_room;
    double *const efficiency = batch_place(b, 0, i, &efficiency_room, sizeof efficiency_room, _Alignof(double));
    const vtx_status answer = vtx_adiabatic_efficiency(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), efficiency);
    batch_move(b, 0, i, efficiency, &efficiency_room, sizeof efficiency_room);
    return answer;
}

vtx_status vtx_adiabatic_efficiency_batch(size_t n, const double *gamma, ptrdiff_t gamma_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_pressure, ptrdiff_t cold_pressure_stride,
        const double *cold_temperature, ptrdiff_t cold_temperature_stride, const double *cold_fraction,
        ptrdiff_t cold_fraction_stride, double *efficiency, ptrdiff_t efficiency_stride, int32_t *status,
        size_t *failed)
{
    const struct batch_input in[] = { { gamma, gamma_stride }, { inlet_pressure, inlet_pressure_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_pressure, cold_pressure_stride },
        { cold_temperature, cold_temperature_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { efficiency, efficiency_stride, 0, sizeof *efficiency } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, adiabatic_efficiency_item, status, failed);
}

static ALWAYS_INLINE vtx_status cop_isothermal_item(const struct batch *b, size_t i)
{
    double performance_room;
    double *const performance = batch_place(b, 0, i, &performance_room, sizeof performance_room, _Alignof(double));
    const vtx_status answer = vtx_cop_isothermal(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i),
        performance);
    batch_move(b, 0, i, performance, &performance_room, sizeof performance_room);
    return answer;
}

vtx_status vtx_cop_isothermal_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *intake_temperature, ptrdiff_t intake_temperature_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride }, { gas_constant, gas_constant_stride },
        { intake_pressure, intake_pressure_stride }, { intake_temperature, intake_temperature_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { cold_temperature, cold_temperature_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { performance, performance_stride, 0, sizeof *performance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cop_isothermal_item, status, failed);
}

static ALWAYS_INLINE vtx_status cop_adiabatic_item(const struct batch *b, size_t i)
{
    double performance_room;
    double *const performance = batch_place(b, 0, i, &performance_room, sizeof performance_room, _Alignof(double));
    const vtx_status answer = vtx_cop_adiabatic(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), batch_get(b, 5, i), batch_get(b, 6, i), batch_get(b, 7, i),
        performance);
    batch_move(b, 0, i, performance, &performance_room, sizeof performance_room);
    return answer;
}

vtx_status vtx_cop_adiabatic_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *gas_constant, ptrdiff_t gas_constant_stride, const double *intake_pressure,
        ptrdiff_t intake_pressure_stride, const double *intake_temperature, ptrdiff_t intake_temperature_stride,
        const double *inlet_pressure, ptrdiff_t inlet_pressure_stride, const double *inlet_temperature,
        ptrdiff_t inlet_temperature_stride, const double *cold_temperature, ptrdiff_t cold_temperature_stride,
        const double *cold_fraction, ptrdiff_t cold_fraction_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride }, { gas_constant, gas_constant_stride },
        { intake_pressure, intake_pressure_stride }, { intake_temperature, intake_temperature_stride },
        { inlet_pressure, inlet_pressure_stride }, { inlet_temperature, inlet_temperature_stride },
        { cold_temperature, cold_temperature_stride }, { cold_fraction, cold_fraction_stride } };
    const struct batch_output out[] = { { performance, performance_stride, 0, sizeof *performance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cop_adiabatic_item, status, failed);
}

static ALWAYS_INLINE vtx_status cop_electrical_item(const struct batch *b, size_t i)
{
    double performance_room;
    double *const performance = batch_place(b, 0, i, &performance_room, sizeof performance_room, _Alignof(double));
    const vtx_status answer = vtx_cop_electrical(batch_get(b, 0, i), batch_get(b, 1, i), batch_get(b, 2, i),
        batch_get(b, 3, i), batch_get(b, 4, i), performance);
    batch_move(b, 0, i, performance, &performance_room, sizeof performance_room);
    return answer;
}

vtx_status vtx_cop_electrical_batch(size_t n, const double *heat_capacity, ptrdiff_t heat_capacity_stride,
        const double *inlet_temperature, ptrdiff_t inlet_temperature_stride, const double *cold_temperature,
        ptrdiff_t cold_temperature_stride, const double *cold_fraction, ptrdiff_t cold_fraction_stride,
        const double *electrical_work, ptrdiff_t electrical_work_stride, double *performance,
        ptrdiff_t performance_stride, int32_t *status, size_t *failed)
{
    const struct batch_input in[] = { { heat_capacity, heat_capacity_stride },
        { inlet_temperature, inlet_temperature_stride }, { cold_temperature, cold_temperature_stride },
        { cold_fraction, cold_fraction_stride }, { electrical_work, electrical_work_stride } };
    const struct batch_output out[] = { { performance, performance_stride, 0, sizeof *performance } };
    return batch_run(n, in, ARRAY_LENGTH(in), out, ARRAY_LENGTH(out), NULL, cop_electrical_item, status, failed);
}
