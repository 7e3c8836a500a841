/* Careful on purpose: first what can be looked at with the cooler closed, then what to open, and what not to do. */
#include "diagnose_words.h"

#include <vtx.h>

static const struct {
    const char *name, *how;
} readings[] = {
    { "supply pressure", "a gauge at the start of the line, ahead of the filter" },
    { "inlet pressure", "a gauge on a tee directly at the cooler's inlet" },
    { "inlet temperature", "a thermometer in the air or on the insulated pipe at the cooler's inlet" },
    { "cold outlet temperature", "a thermometer in the cold air, shielded or behind a wide calm piece of tube" },
    { "hot outlet temperature", "a thermometer in the hot air, clear of the metal" },
    { "inlet flow", "a flow meter ahead of the cooler" },
    { "cold flow", "a flow meter behind the cold outlet that costs next to no pressure" },
    { "cold outlet pressure", "a gauge on a tee between the tube's cold outlet and what is screwed on it" },
};

static const struct {
    const char *name, *proof, *remedy;
} causes[] = {
    { "nothing is wrong with the cooler", "the readings are those of a healthy cooler within what its instruments can show.",
      "Leave the cooler as it is and keep these readings to compare with. If the work is still too warm, look at the work:\n"
      "  aim and distance of the nozzle, more heat than before, a draught, coolant on the face." },
    { "the supply pressure is low", "read the main's gauge at rest and with everything running; it sags when the compressor or the main is short of air.",
      "Look for a regulator turned down, a shut-off valve half shut, large new users, leaks. Have the pressure raised only by whoever is\n"
      "answerable for the net, and never above what the weakest of cooler, hose, bowl and coupling is marked for." },
    { "the inlet nozzle is worn wide", "more air goes in than the data sheet says at this pressure, and both outlets are less apart.",
      "Take the inlet nozzle (generator) out and compare it with a new one; replace it, do not file or drill it. Then look for what wore\n"
      "it: scale and grit from the line, a filter missing or torn." },
    { "the inlet nozzle is partly blocked", "less air goes in although the pressure at the inlet is right.",
      "Open the inlet, clean strainer and nozzle with a soft brush and a cleaner that the seals stand; no wire, no drill. Look for the\n"
      "dirt's origin: sealing tape, pipe scale, compressor oil. A filter at the cooler keeps it out." },
    { "the cold outlet is narrowed by ice or dirt", "shut the air off for half an hour and start again: ice is gone at first and comes back within minutes, dirt stays.",
      "Ice: let it thaw by itself, no flame and no chipping; have the dryer's dew point measured at the cooler, or set the cooler less\n"
      "cold. Dirt: clean the cold opening with a soft brush." },
    { "something behind the cold outlet holds the air back", "look at what is screwed on: a kinked or long hose, a clogged muffler, a nozzle that is too narrow.",
      "Take the accessory off and read again without it. Replace a clogged muffler, shorten or widen the hose." },
    { "the hot outlet is partly blocked", "look at the muffler on the hot end and at the valve's gap; the cold air is plenty but not cold.",
      "Let the hot end cool down first: it burns. Replace a clogged muffler, clean the valve's seat, set the valve as it was." },
    { "the hot valve is not set as described", "compare the valve's mark or its turns from shut with what was noted when it was set.",
      "Turn it back in steps of an eighth of a turn, wait until the reading at the cold outlet stands, and stop where it is as it was.\n"
      "Mark the setting." },
    { "the supply air is too warm", "hold a thermometer on the pipe at the compressor's outlet, behind the dryer and at the cooler: where does it warm up?",
      "Look at aftercooler, its fan and fins, and at pipes and hoses that pass an oven, a hot machine or the sun." },
    { "a seal inside leaks feed into the cold air", "the cold air is plenty and too warm, and the hot end is as hot as ever.",
      "Open the cooler, replace the seals at the inlet nozzle and see that it sits square; tighten as its papers say." },
    { "the cold end takes up heat", "touch nothing bare: look where frost or dew sits, and what hot or wet metal the cold end and its hose rest on.",
      "Insulate cold end and cold hose, and set the cooler off hot metal. Nothing inside is broken." },
    { "the filter in the line is loaded", "read the pressure ahead of and behind the filter while the cooler runs; the difference is its loss.",
      "Change the element, do not blow it out; drain the bowl; write down date and loss. If the new element loads quickly, look upstream." },
    { "the inlet pressure gauge reads wrong", "hang a second gauge on the same tee; look where the needle stands without pressure.",
      "Replace the gauge or have it calibrated. Nothing else needs doing." },
};

static const char *const contradictions[] = {
    "none",
    "both outlets are read colder than the inlet by more than throttled air can cool",
    "the cold outlet is read colder than any expansion from this inlet could make it",
    "more cold air is read than goes in",
    "flows and temperatures give different cold fractions",
};

static const char *const inputs[] = { "the supply pressure", "the supply temperature", "the supply's humidity", "the barometer",
                                      "the room's temperature", "the room's humidity", "the cooler's rated flow", "the setting",
                                      "the tube's efficiency", "the cold fraction at which the tube is coldest", "the target temperature",
                                      "the losses of the line" };

const char *words_input(int32_t input)
{
    if (input == VTX_TERM_PRESSURE_EXPONENT)
        return "how the tube's efficiency goes with pressure";
    if (input == VTX_TERM_BACK_PRESSURE)
        return "the pressure behind the cold outlet during the test";
    return inputs[input - VTX_INPUT_SUPPLY_PRESSURE];
}

const char *words_reading(int32_t reading) { return readings[reading - VTX_READ_SUPPLY_PRESSURE].name; }
const char *words_how_to_read(int32_t reading) { return readings[reading - VTX_READ_SUPPLY_PRESSURE].how; }
const char *words_cause(int32_t cause) { return causes[cause - VTX_CAUSE_NOTHING].name; }
const char *words_proof(int32_t cause) { return causes[cause - VTX_CAUSE_NOTHING].proof; }
const char *words_remedy(int32_t cause) { return causes[cause - VTX_CAUSE_NOTHING].remedy; }
const char *words_contradiction(int32_t contradiction) { return contradictions[contradiction - VTX_CONTRADICTION_NONE]; }
