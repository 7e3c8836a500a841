/* All of libvtx. */
#ifndef VTX_H
#define VTX_H

#include <vtx/batch.h>
#include <vtx/budget.h>
#include <vtx/decision.h>
#include <vtx/quantity.h>
#include <vtx/status.h>
#include <vtx/trend.h>
#include <vtx/units.h>
#include <vtx/version.h>

#include <vtx/air.h>
#include <vtx/air_quality.h>
#include <vtx/atmosphere.h>
#include <vtx/moist_air.h>
#include <vtx/moist_pair.h>
#include <vtx/process.h>
#include <vtx/water.h>

#include <vtx/bore.h>
#include <vtx/chain.h>
#include <vtx/chain_element.h>
#include <vtx/conductance.h>
#include <vtx/fanno.h>
#include <vtx/flow_coefficient.h>
#include <vtx/friction.h>
#include <vtx/impingement.h>
#include <vtx/isentropic.h>
#include <vtx/jet.h>
#include <vtx/line.h>
#include <vtx/restriction.h>
#include <vtx/sharp_orifice.h>
#include <vtx/shock.h>
#include <vtx/standard_flow.h>
#include <vtx/valve.h>

#include <vtx/balance.h>
#include <vtx/calibration.h>
#include <vtx/cold_fraction.h>
#include <vtx/icing.h>
#include <vtx/laws.h>
#include <vtx/reading.h>
#include <vtx/separation.h>
#include <vtx/setting.h>
#include <vtx/thermometry.h>

#include <vtx/air_cost.h>
#include <vtx/cold_tube.h>
#include <vtx/compressor.h>
#include <vtx/convection.h>
#include <vtx/dead_end.h>
#include <vtx/drying.h>
#include <vtx/exposure.h>
#include <vtx/filter.h>
#include <vtx/freezing.h>
#include <vtx/insulation.h>
#include <vtx/machining.h>
#include <vtx/material.h>
#include <vtx/noise.h>
#include <vtx/part.h>
#include <vtx/purity.h>
#include <vtx/receiver.h>
#include <vtx/surface.h>
#include <vtx/tool.h>
#include <vtx/touch.h>
#include <vtx/transient.h>

#include <vtx/acceptance.h>
#include <vtx/commissioning.h>
#include <vtx/comparison.h>
#include <vtx/cooler.h>
#include <vtx/diagnosis.h>
#include <vtx/job.h>
#include <vtx/selection.h>
#include <vtx/sizing.h>
#include <vtx/uncertainty.h>
#include <vtx/wear.h>

#endif
