/*
 * liboverslab: computation engine for pouring new concrete floors over old ones.
 *
 * Made from the sources; do not edit.
 *
 * Every function that can fail gives a status: 0 is success, other numbers are the constants OVS_... below; a function
 * that makes something gives NULL instead and writes the status to `status`, which may be NULL.
 *
 * Numbers are double in the unit that the argument's name ends with; counts and words are int, a word by its constant.
 * Inputs come first, by value or const; outputs follow. A pointer may be NULL only where it is said. On failure outputs
 * stay as they were, but a text buffer is emptied and bad elements of an array become NaN (int: -1).
 *
 * `msg`, `msg_len`: a buffer for one line of at most 200 bytes of ASCII that says which argument is refused, what was given
 * and what is allowed; empty on success; NULL, 0 where it is not wanted. The reason in full comes from the function
 * whose name ends in _why, called with the same inputs.
 *
 * Text comes in as UTF-8 with its length in bytes and no zero byte. Text goes out into a buffer of the caller, always
 * terminated and never cut inside a character; `needed` (may be NULL) gets the bytes needed with the terminator. A
 * NULL buffer of length 0 asks for `needed` alone. A text that is of no use cut short gives OVS_BUFFER_SHORT.
 *
 * Pointers to ovs_... types are made by the library and freed by the _free function of their type, once; free takes NULL.
 * What they point to never changes, so threads may share it. The library keeps no state between calls, starts no threads,
 * reads no file, environment or clock, and prints nothing.
 *
 * Beside the statuses listed with it, any function may give OVS_NULL_POINTER, OVS_LENGTH_NEGATIVE, or OVS_INTERNAL for a
 * fault of the library itself.
 */

#ifndef OVERSLAB_H
#define OVERSLAB_H

/**
 * The status of success.
 */
#define OVS_OK 0

/**
 * The number of the ABI that this header describes; compare it with ovs_abi_version() once after loading.
 */
#define OVS_ABI_VERSION 0

/**
 * A buffer of this many bytes holds every message whole.
 */
#define OVS_MESSAGE_SIZE 201

#ifdef __cplusplus
extern "C" {
#endif /* __cplusplus */

/**
 * The number of the ABI that the library was built with. It grows when a function changes or goes, not when one is added.
 */
int ovs_abi_version(void);

/**
 * Writes the version of the library: `0.1.0`.
 *
 * Returns 0, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_version(char *text, int text_len);

/**
 * Writes the name of a status and what it means: `OUT_OF_RANGE: the value lies outside its range`.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such status, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_status_text(int status,
                    char *text,
                    int text_len);

/**
 * Writes the name of a note and what it means.
 *
 * Returns 0, OVS_OUT_OF_RANGE where there is no such note, OVS_BUFFER_SHORT, OVS_NULL_POINTER or OVS_LENGTH_NEGATIVE.
 */
int ovs_note_text(int note,
                  char *text,
                  int text_len);

/**
 * Calls any operation by its name. A bare number in `args_json` is in the unit of its port in US units, as are the results.
 *
 * - `operation`, `operation_len`: its name in the table: without `ovs_` and `_us`.
 * - `args_json`, `args_len`: an object of the ports: `{"name": value}`; a text such as `"2 1/2 in"` says its own unit.
 * - `out`, `out_len`, `needed`: an object of `results`, `notes`, `basis` and `taken`.
 *
 * Returns 0, OVS_OPERATION_UNKNOWN, OVS_SYNTAX, OVS_BUFFER_SHORT, or what the operation refuses.
 */
int ovs_call_us(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * Calls any operation by its name, as ovs_call_us, in SI units.
 */
int ovs_call_si(const char *operation,
                int operation_len,
                const char *args_json,
                int args_len,
                char *out,
                int out_len,
                int *needed,
                char *msg,
                int msg_len);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
 * - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
 * - `fall_in_per_ft` (in/ft), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_us(2, 20, ...) gives fall_in_per_ft = 0.1.
 */
int ovs_fall_us(double drop_in, double run_ft, double *fall_in_per_ft, int *notes, char *msg, int msg_len);

/**
 * The fall of a surface that loses a height over a run.
 *
 * Equation: fall = drop / run.
 * Taken for granted: drop and run are measured plumb and level, not along the slope.
 *
 * - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
 * - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
 * - `fall_percent` (%), out: fall of the surface.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_fall_si(50.8, 6.096, ...) gives fall_percent = 0.833333.
 */
int ovs_fall_si(double drop_mm, double run_m, double *fall_percent, int *notes, char *msg, int msg_len);

/**
 * ovs_fall_us for each of `n` elements.
 *
 * - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
 * - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
 * - `fall_in_per_ft` (in/ft), out: fall of the surface.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_us_array(const double *drop_in,
                      const double *run_ft,
                      double *fall_in_per_ft,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_fall_si for each of `n` elements.
 *
 * - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
 * - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
 * - `fall_percent` (%), out: fall of the surface.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_fall_si_array(const double *drop_mm,
                      const double *run_m,
                      double *fall_percent,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_fall_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `drop_in` (in): height lost; at least 0 in, at most 1200 in.
 * - `run_ft` (ft): level distance over which it is lost; more than 0 ft, at most 10000 ft.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_us_why(double drop_in, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_fall_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `drop_mm` (mm): height lost; at least 0 mm, at most 30480 mm.
 * - `run_m` (m): level distance over which it is lost; more than 0 m, at most 3048 m.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_fall_si_why(double drop_mm, double run_m, char *text, int text_len, int *needed);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
 * - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
 * - `drop_in` (in), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_us(0.125, 32, ...) gives drop_in = 4.
 */
int ovs_drop_us(double fall_in_per_ft, double run_ft, double *drop_in, int *notes, char *msg, int msg_len);

/**
 * The height that a surface loses over a run at a fall.
 *
 * Equation: drop = fall x run.
 * Taken for granted: the run is measured level, not along the slope.
 *
 * - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
 * - `run_m` (m): level distance; more than 0 m, at most 3048 m.
 * - `drop_mm` (mm), out: height lost.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_drop_si(1.04167, 9.7536, ...) gives drop_mm = 101.6.
 */
int ovs_drop_si(double fall_percent, double run_m, double *drop_mm, int *notes, char *msg, int msg_len);

/**
 * ovs_drop_us for each of `n` elements.
 *
 * - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
 * - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
 * - `drop_in` (in), out: height lost.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_us_array(const double *fall_in_per_ft,
                      const double *run_ft,
                      double *drop_in,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * ovs_drop_si for each of `n` elements.
 *
 * - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
 * - `run_m` (m): level distance; more than 0 m, at most 3048 m.
 * - `drop_mm` (mm), out: height lost.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_drop_si_array(const double *fall_percent,
                      const double *run_m,
                      double *drop_mm,
                      int *notes,
                      int n,
                      int *bad_index,
                      char *msg,
                      int msg_len);

/**
 * Why ovs_drop_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `fall_in_per_ft` (in/ft): fall of the surface; at least 0 in/ft, at most 12 in/ft.
 * - `run_ft` (ft): level distance; more than 0 ft, at most 10000 ft.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_us_why(double fall_in_per_ft, double run_ft, char *text, int text_len, int *needed);

/**
 * Why ovs_drop_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `fall_percent` (%): fall of the surface; at least 0 %, at most 100 %.
 * - `run_m` (m): level distance; more than 0 m, at most 3048 m.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_drop_si_why(double fall_percent, double run_m, char *text, int text_len, int *needed);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 - t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
 * - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `net_ft3` (ft3), out: fill less high spots.
 * - `fill_ft3` (ft3), out: fill above the old slab.
 * - `high_ft3` (ft3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_us(50, 3, 4, 5, ...) gives net_ft3 = 16.6667, fill_ft3 = 16.6667, high_ft3 = 0.
 */
int ovs_triangular_prism_us(double area_ft2,
                            double thickness_1_in,
                            double thickness_2_in,
                            double thickness_3_in,
                            double *net_ft3,
                            double *fill_ft3,
                            double *high_ft3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * The volume between old slab and finish over one triangle, split where they meet.
 *
 * Equation: net = area (t1 + t2 + t3) / 3; one corner of the other sign: high = (area / 3) t3^3 / ((t3 - t1) (t3 - t2)).
 * Taken for granted: both surfaces are plane over the triangle.
 *
 * - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
 * - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
 * - `net_m3` (m3), out: fill less high spots.
 * - `fill_m3` (m3), out: fill above the old slab.
 * - `high_m3` (m3), out: old slab above the finish.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: plane and solid geometry: derived.
 * Since 0.1.0.
 * Example: ovs_triangular_prism_si(4.64515, 76.2, 101.6, 127, ...) gives net_m3 = 0.471947, fill_m3 = 0.471947, high_m3 = 0.
 */
int ovs_triangular_prism_si(double area_m2,
                            double thickness_1_mm,
                            double thickness_2_mm,
                            double thickness_3_mm,
                            double *net_m3,
                            double *fill_m3,
                            double *high_m3,
                            int *notes,
                            char *msg,
                            int msg_len);

/**
 * ovs_triangular_prism_us for each of `n` elements.
 *
 * - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
 * - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `net_ft3` (ft3), out: fill less high spots.
 * - `fill_ft3` (ft3), out: fill above the old slab.
 * - `high_ft3` (ft3), out: old slab above the finish.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_us_array(const double *area_ft2,
                                  const double *thickness_1_in,
                                  const double *thickness_2_in,
                                  const double *thickness_3_in,
                                  double *net_ft3,
                                  double *fill_ft3,
                                  double *high_ft3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * ovs_triangular_prism_si for each of `n` elements.
 *
 * - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
 * - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
 * - `net_m3` (m3), out: fill less high spots.
 * - `fill_m3` (m3), out: fill above the old slab.
 * - `high_m3` (m3), out: old slab above the finish.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_triangular_prism_si_array(const double *area_m2,
                                  const double *thickness_1_mm,
                                  const double *thickness_2_mm,
                                  const double *thickness_3_mm,
                                  double *net_m3,
                                  double *fill_m3,
                                  double *high_m3,
                                  int *notes,
                                  int n,
                                  int *bad_index,
                                  char *msg,
                                  int msg_len);

/**
 * Why ovs_triangular_prism_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `area_ft2` (ft2): plan area of the triangle; more than 0 ft2, at most 10763910.4167 ft2.
 * - `thickness_1_in` (in): thickness at the first corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_2_in` (in): thickness at the second corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `thickness_3_in` (in): thickness at the third corner; at least -3937.00787402 in, at most 3937.00787402 in.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_us_why(double area_ft2,
                                double thickness_1_in,
                                double thickness_2_in,
                                double thickness_3_in,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * Why ovs_triangular_prism_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `area_m2` (m2): plan area of the triangle; more than 0 m2, at most 1000000 m2.
 * - `thickness_1_mm` (mm): thickness at the first corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_2_mm` (mm): thickness at the second corner; at least -100000 mm, at most 100000 mm.
 * - `thickness_3_mm` (mm): thickness at the third corner; at least -100000 mm, at most 100000 mm.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_triangular_prism_si_why(double area_m2,
                                double thickness_1_mm,
                                double thickness_2_mm,
                                double thickness_3_mm,
                                char *text,
                                int text_len,
                                int *needed);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
 * - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
 * - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `volume_yd3` (yd3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_us(12, 2, 1, 0, ...) gives volume_yd3 = 0.444444.
 */
int ovs_prismoid_us(double length_ft,
                    double first_ft2,
                    double middle_ft2,
                    double last_ft2,
                    double *volume_yd3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * The volume of a body between two end sections with a third half way.
 *
 * Equation: volume = length (first + 4 middle + last) / 6.
 * Taken for granted: the sides are plane or warped evenly between the sections.
 *
 * - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
 * - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
 * - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
 * - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
 * - `volume_m3` (m3), out: volume of the body.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: V = L (A1 + 4 Am + A2) / 6: Surveying textbooks, earthwork volumes (any), prismoidal formula.
 * Since 0.1.0.
 * Example: ovs_prismoid_si(3.6576, 0.185806, 0.092903, 0, ...) gives volume_m3 = 0.339802.
 */
int ovs_prismoid_si(double length_m,
                    double first_m2,
                    double middle_m2,
                    double last_m2,
                    double *volume_m3,
                    int *notes,
                    char *msg,
                    int msg_len);

/**
 * ovs_prismoid_us for each of `n` elements.
 *
 * - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
 * - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
 * - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `volume_yd3` (yd3), out: volume of the body.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_us_array(const double *length_ft,
                          const double *first_ft2,
                          const double *middle_ft2,
                          const double *last_ft2,
                          double *volume_yd3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * ovs_prismoid_si for each of `n` elements.
 *
 * - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
 * - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
 * - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
 * - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
 * - `volume_m3` (m3), out: volume of the body.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_prismoid_si_array(const double *length_m,
                          const double *first_m2,
                          const double *middle_m2,
                          const double *last_m2,
                          double *volume_m3,
                          int *notes,
                          int n,
                          int *bad_index,
                          char *msg,
                          int msg_len);

/**
 * Why ovs_prismoid_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `length_ft` (ft): length between the end sections; more than 0 ft, at most 32808.3989501 ft.
 * - `first_ft2` (ft2): area of the first section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `middle_ft2` (ft2): area of the section half way; at least 0 ft2, at most 10763910.4167 ft2.
 * - `last_ft2` (ft2): area of the last section; at least 0 ft2, at most 10763910.4167 ft2.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_us_why(double length_ft,
                        double first_ft2,
                        double middle_ft2,
                        double last_ft2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * Why ovs_prismoid_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `length_m` (m): length between the end sections; more than 0 m, at most 10000 m.
 * - `first_m2` (m2): area of the first section; at least 0 m2, at most 1000000 m2.
 * - `middle_m2` (m2): area of the section half way; at least 0 m2, at most 1000000 m2.
 * - `last_m2` (m2): area of the last section; at least 0 m2, at most 1000000 m2.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_prismoid_si_why(double length_m,
                        double first_m2,
                        double middle_m2,
                        double last_m2,
                        char *text,
                        int text_len,
                        int *needed);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
 * - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
 * - `loads`, out: truck loads.
 * - `last_yd3` (yd3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_us(14, 9.8, ...) gives loads = 2, last_yd3 = 4.2.
 */
int ovs_trucks_us(double ordered_yd3,
                  double capacity_yd3,
                  int *loads,
                  double *last_yd3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * How many truck loads an order takes, and what the last one carries.
 *
 * Equation: loads = ordered / capacity, rounded up; last = ordered - (loads - 1) capacity.
 * Taken for granted: every truck but the last is full.
 *
 * - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
 * - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
 * - `loads`, out: truck loads.
 * - `last_m3` (m3), out: what the last truck carries.
 * - `notes`, out: the number of the result's note, or 0; may be null.
 *
 * Refuses with OVS_NOT_FINITE, OVS_OUT_OF_RANGE.
 * Basis: a full truck carries about 10 yd3: NRMCA fleet survey (2017), table 4: typical full load 9.8 yd3, range 8.2 to 11.8, as quoted elsewhere.
 * Since 0.1.0.
 * Example: ovs_trucks_si(10.7038, 7.49264, ...) gives loads = 2, last_m3 = 3.21113.
 */
int ovs_trucks_si(double ordered_m3,
                  double capacity_m3,
                  int *loads,
                  double *last_m3,
                  int *notes,
                  char *msg,
                  int msg_len);

/**
 * ovs_trucks_us for each of `n` elements.
 *
 * - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
 * - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
 * - `loads`, out: truck loads.
 * - `last_yd3` (yd3), out: what the last truck carries.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_us_array(const double *ordered_yd3,
                        const double *capacity_yd3,
                        int *loads,
                        double *last_yd3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * ovs_trucks_si for each of `n` elements.
 *
 * - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
 * - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
 * - `loads`, out: truck loads.
 * - `last_m3` (m3), out: what the last truck carries.
 * - `notes`, out: the number of each element's note, or 0; may be null.
 * - `n`: how many elements each array has; with 0 the arrays may be null.
 * - `bad_index`, out: the place of the first bad element, or -1; may be null.
 */
int ovs_trucks_si_array(const double *ordered_m3,
                        const double *capacity_m3,
                        int *loads,
                        double *last_m3,
                        int *notes,
                        int n,
                        int *bad_index,
                        char *msg,
                        int msg_len);

/**
 * Why ovs_trucks_us refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `ordered_yd3` (yd3): volume ordered; more than 0 yd3, at most 130795.061931 yd3.
 * - `capacity_yd3` (yd3): what one truck carries; at least 0.130795061931 yd3, at most 26.1590123863 yd3.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_us_why(double ordered_yd3, double capacity_yd3, char *text, int text_len, int *needed);

/**
 * Why ovs_trucks_si refuses these inputs, in full; where it does not, the meaning of its note or nothing.
 *
 * - `ordered_m3` (m3): volume ordered; more than 0 m3, at most 100000 m3.
 * - `capacity_m3` (m3): what one truck carries; at least 0.1 m3, at most 20 m3.
 * - `text`, `text_len`, `needed`, out: the text, cut where the buffer is short, and the bytes it needs.
 *
 * Returns the status of the call itself.
 */
int ovs_trucks_si_why(double ordered_m3, double capacity_m3, char *text, int text_len, int *needed);

#ifdef __cplusplus
} /* extern "C" */
#endif /* __cplusplus */

#endif  /* OVERSLAB_H */
