/* The default separation curve and its band against the points it rests on, as data for gnuplot, with the residuals.
 *
 * plot_separation POINTS FOLDER      POINTS: separation_points.csv, which says what its rows are worth
 *
 * Writes FOLDER/separation_curve.dat, separation_fitted.dat, separation_aside.dat and separation.gp; `gnuplot separation.gp` in
 * that folder draws separation.svg. The residuals go to standard output. */
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include <vtx.h>

struct study {
    char name[48];
    int fitted;
    double inlet_pressure, cold_pressure, inlet_temperature, cold_fraction, drop; /* NaN: not known */
};

static double number(const char *text) { return strcmp(text, "-") == 0 ? (double)NAN : strtod(text, NULL); }

/* Splits at semicolons; returns 0 for comments and short lines. */
static int read_study(char *line, struct study *s)
{
    const char *field[8];
    char *at = line;
    for (int i = 0; i < 8; i++) {
        field[i] = at;
        at = strchr(at, ';');
        if (!at)
            return 0;
        *at++ = 0;
    }
    if (*line == '#')
        return 0;
    snprintf(s->name, sizeof s->name, "%s", field[0]);
    s->fitted = strcmp(field[1], "fitted") == 0;
    s->inlet_pressure = number(field[2]);
    s->cold_pressure = number(field[3]);
    s->inlet_temperature = number(field[4]);
    s->cold_fraction = number(field[5]);
    s->drop = number(field[6]);
    return 1;
}

/* Drop of the perfect gas, as the default was fitted; a study without a cold fraction is taken at the curve's coldest. */
static int predict(const vtx_tube *tube, const struct study *s, vtx_streams *streams)
{
    const double mu = isnan(s->cold_fraction) ? tube->coldest_fraction : s->cold_fraction;
    if (isnan(s->inlet_pressure))
        return 0;
    return vtx_tube_separate(tube, VTX_AIR_IDEAL, s->inlet_pressure, s->inlet_temperature, 0, s->cold_pressure, s->cold_pressure, mu,
                             streams) == VTX_OK;
}

static FILE *create(const char *folder, const char *name)
{
    char path[1024];
    snprintf(path, sizeof path, "%s/%s", folder, name);
    FILE *file = fopen(path, "w");
    if (!file) {
        perror(path);
        exit(1);
    }
    return file;
}

/* Share of the isentropic drop that becomes cold, over the cold fraction: typical, low and high. */
static void write_curve(const vtx_tube *tube, const char *folder)
{
    FILE *file = create(folder, "separation_curve.dat");
    fprintf(file, "# cold fraction, cold drop over isentropic drop: typical, low, high\n");
    for (int i = 0; i <= 100; i++) {
        vtx_streams s;
        vtx_tube_separate(tube, VTX_AIR_IDEAL, 7e5, 293.15, 0, 101325, 101325, i / 100.0, &s);
        const double whole = 293.15 - s.isentropic_temperature;
        fprintf(file, "%.2f %.5f %.5f %.5f\n", s.cold_fraction, (293.15 - s.cold_temperature) / whole,
                (293.15 - s.cold_temperature_high) / whole, (293.15 - s.cold_temperature_low) / whole);
    }
    fclose(file);
}

static void write_script(const char *folder)
{
    FILE *file = create(folder, "separation.gp");
    fprintf(file,
            "set terminal svg size 900,620 background 'white'\n"
            "set output 'separation.svg'\n"
            "set termoption noenhanced\n"
            "set title \"Default curve and its 80 %% band against the points it rests on\\n"
            "Points: nearly all from memory, none from an opened table. They show scatter, they prove nothing.\"\n"
            "set xlabel 'cold fraction (open marks: not known, drawn at 0.30)'\n"
            "set ylabel 'cold drop over isentropic drop'\n"
            "set xrange [0:1]\nset yrange [0:0.6]\nset key top right\nset grid\n"
            "plot 'separation_curve.dat' using 1:3:4 with filledcurves fillcolor '#d0d8f0' title 'band 0.18 to 0.39', \\\n"
            "     '' using 1:2 with lines linewidth 2 linecolor '#2040a0' title 'default, peak 0.28 at 0.30', \\\n"
            "     'separation_fitted.dat' using 1:($3 > 0.5 ? $2 : 1/0) with points pointtype 7 linecolor '#202020' title 'used in the fit', \\\n"
            "     '' using 1:($3 > 0.5 ? 1/0 : $2) with points pointtype 6 linecolor '#202020' title 'used, cold fraction not known', \\\n"
            "     'separation_aside.dat' using 1:2 with points pointtype 2 linecolor '#c03020' title 'set aside', \\\n"
            "     'separation_fitted.dat' using 1:2:4 with labels font ',8' offset 0,0.8 left notitle, \\\n"
            "     'separation_aside.dat' using 1:2:4 with labels font ',8' offset 0,0.8 left notitle\n");
    fclose(file);
}

int main(int count, char **arguments)
{
    char line[2048];
    double sum = 0, squares = 0, worst = 0;
    int studies = 0, within = 0;
    vtx_tube tube;
    if (count != 3) {
        fprintf(stderr, "usage: plot_separation POINTS FOLDER\n");
        return 2;
    }
    FILE *points = fopen(arguments[1], "r");
    if (!points) {
        perror(arguments[1]);
        return 1;
    }
    vtx_tube_init(&tube);
    write_curve(&tube, arguments[2]);
    write_script(arguments[2]);
    FILE *fitted = create(arguments[2], "separation_fitted.dat"), *aside = create(arguments[2], "separation_aside.dat");
    printf("Cold drop in K: reported (nearly all from memory, see %s), default curve, its band, residual\n", arguments[1]);
    while (fgets(line, sizeof line, points)) {
        struct study s;
        vtx_streams streams;
        if (!read_study(line, &s))
            continue;
        if (!predict(&tube, &s, &streams)) {
            printf("%-26s %6.1f   no pressure known: cannot be compared\n", s.name, s.drop);
            continue;
        }
        const double t0 = s.inlet_temperature, residual = t0 - streams.cold_temperature - s.drop;
        const double low = t0 - streams.cold_temperature_high, high = t0 - streams.cold_temperature_low;
        printf("%-26s %6.1f %6.1f  %5.1f..%4.1f  %+6.1f%s\n", s.name, s.drop, t0 - streams.cold_temperature, low, high, residual,
               s.fitted ? "" : "  set aside");
        fprintf(s.fitted ? fitted : aside, "%.3f %.4f %d %s\n", streams.cold_fraction, s.drop / (t0 - streams.isentropic_temperature),
                !isnan(s.cold_fraction), s.name);
        if (!s.fitted)
            continue;
        studies++;
        within += s.drop >= low && s.drop <= high;
        sum += residual;
        squares += residual * residual;
        worst = fmax(worst, fabs(residual));
    }
    fclose(points);
    fclose(fitted);
    fclose(aside);
    printf("fitted points %d: mean residual %+.1f K, root mean square %.1f K, worst %.1f K; %d within the band\n", studies,
           sum / studies, sqrt(squares / studies), worst, within);
    printf("The curve was fitted to these very points, so this is no test of it: only the spread between tubes is real information.\n");
    return 0;
}
