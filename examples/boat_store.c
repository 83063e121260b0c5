/* The boat store (invented), called from C: from the job file to the report, and the same floor from bare arrays.
 *
 *   boat_store [JOB.toml] [--figures]
 */
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#include "overslab.h"

#define MESSAGE 201

static char message[MESSAGE];

static int refused(const char *what, int status) {
    fprintf(stderr, "%s: status %d: %s\n", what, status, message);
    return EXIT_FAILURE;
}

/* The whole of a file, ended by a zero; the caller frees it. */
static char *read_file(const char *path, int *length) {
    FILE *file = fopen(path, "rb");
    char *text = NULL;
    long size;
    if (file == NULL) {
        return NULL;
    }
    if (fseek(file, 0, SEEK_END) == 0 && (size = ftell(file)) >= 0 && fseek(file, 0, SEEK_SET) == 0) {
        text = malloc((size_t)size + 1);
        if (text != NULL && fread(text, 1, (size_t)size, file) == (size_t)size) {
            text[size] = '\0';
            *length = (int)size;
        }
    }
    fclose(file);
    return text;
}

/* One text of an answer; the caller frees it. */
static char *answer_text(const ovs_answer *answer, int result) {
    int needed = 0;
    char *text;
    ovs_answer_text(answer, result, NULL, 0, &needed, message, MESSAGE);
    text = malloc((size_t)needed + 1);
    if (text != NULL) {
        ovs_answer_text(answer, result, text, needed + 1, &needed, message, MESSAGE);
    }
    return text;
}

static void print_figures(const ovs_answer *answer) {
    static const struct {
        const char *name;
        int result;
    } figures[] = {{"ordered_yd3", OVS_REPORT_ORDERED},   {"figured_yd3", OVS_REPORT_FIGURED},
                   {"loads", OVS_REPORT_LOADS},           {"net_yd3", OVS_REPORT_NET},
                   {"least_in", OVS_REPORT_LEAST},        {"greatest_in", OVS_REPORT_GREATEST},
                   {"mean_in", OVS_REPORT_MEAN}};
    size_t i;
    for (i = 0; i < sizeof figures / sizeof figures[0]; i++) {
        double number = 0.0;
        int count = 0, status;
        if (figures[i].result == OVS_REPORT_LOADS) {
            status = ovs_answer_count(answer, figures[i].result, &count, message, MESSAGE);
            number = count;
        } else {
            status = ovs_answer_number_us(answer, figures[i].result, &number, message, MESSAGE);
        }
        if (status == OVS_KEY_MISSING) {
            puts("no figures: the old slab spans free");
            return;
        }
        printf("%s %.9f\n", figures[i].name, number);
    }
}

/* The same old floor from arrays, as a program that keeps its own readings would call it. */
static int from_arrays(void) {
    const double length_ft[] = {20.0, 32.0, 20.0, 32.0};
    const char *names = "{\"sides\": {\"name\": [\"front\", \"right\", \"back\", \"left\"]}}";
    const double column_ft[] = {0.5, 7.0, 13.0, 19.5};
    const double row_ft[] = {0.5, 8.0, 16.0, 24.0, 31.5};
    const double rod_in[] = {60.625, 60.5,   60.375, 60.75, 59.875, 60.0,  59.875, 60.125, 59.375, 59.375,
                             59.625, 59.5,   58.75,  59.0,  59.25,  58.875, 58.0,  58.125, 58.25,  58.25};
    double x_ft[20], y_ft[20], elevation_ft[20], instrument_ft, net, least, greatest;
    int status = 0, i;
    ovs_outline *outline;
    ovs_survey *survey = NULL;
    ovs_finish *finish = NULL;
    ovs_answer *thickness = NULL;
    for (i = 0; i < 20; i++) {
        x_ft[i] = column_ft[i % 4];
        y_ft[i] = row_ft[i / 4];
        status = ovs_rod_elevation_us(100.0, 50.5 / 12.0, rod_in[i] / 12.0, &elevation_ft[i], &instrument_ft, NULL, message,
                                      MESSAGE);
        if (status != 0) {
            return refused("rod", status);
        }
    }
    outline = ovs_outline_from_sides_us(length_ft, 4, names, (int)strlen(names), &status, NULL, 0, message, MESSAGE);
    if (outline != NULL) {
        survey = ovs_survey_from_shots_us(outline, x_ft, y_ft, elevation_ft, 20, NULL, 0, &status, NULL, 0, message, MESSAGE);
    }
    if (survey != NULL) {
        const char *options = "{\"margin\": \"3/8 in\", \"edge\": \"front\", \"round\": \"1/8 in\", \"datum\": \"100 ft\"}";
        finish = ovs_finish_at_least_us(survey, 3.0, options, (int)strlen(options), &status, NULL, 0, message, MESSAGE);
    }
    if (finish != NULL) {
        thickness = ovs_thickness_us(survey, finish, NULL, NULL, 0, &status, NULL, 0, message, MESSAGE);
    }
    if (thickness != NULL) {
        ovs_answer_number_us(thickness, OVS_THICKNESS_NET, &net, message, MESSAGE);
        ovs_answer_number_us(thickness, OVS_THICKNESS_LEAST_MEASURED, &least, message, MESSAGE);
        ovs_answer_number_us(thickness, OVS_THICKNESS_GREATEST, &greatest, message, MESSAGE);
        printf("\nThe same floor from bare arrays: %.2f yd3, %.2f to %.2f in thick.\n", net, least, greatest);
    }
    ovs_answer_free(thickness);
    ovs_finish_free(finish);
    ovs_survey_free(survey);
    ovs_outline_free(outline);
    return status == 0 ? EXIT_SUCCESS : refused("from arrays", status);
}

int main(int argc, char **argv) {
    const char *path = "examples/boat_store.toml";
    int figures = 0, length = 0, status = 0, i;
    char *text;
    ovs_job *job;
    ovs_answer *answer;
    for (i = 1; i < argc; i++) {
        if (strcmp(argv[i], "--figures") == 0) {
            figures = 1;
        } else {
            path = argv[i];
        }
    }
    text = read_file(path, &length);
    if (text == NULL) {
        fprintf(stderr, "%s cannot be read\n", path);
        return EXIT_FAILURE;
    }
    job = ovs_job_from_text_us(text, length, NULL, 0, &status, NULL, 0, message, MESSAGE);
    free(text);
    if (job == NULL) {
        return refused(path, status);
    }
    answer = ovs_report_us(job, NULL, NULL, 0, &status, NULL, 0, message, MESSAGE);
    ovs_job_free(job);
    if (answer == NULL) {
        return refused(path, status);
    }
    if (figures) {
        print_figures(answer);
    } else {
        char *report = answer_text(answer, OVS_REPORT_TEXT);
        if (report != NULL) {
            fputs(report, stdout);
        }
        free(report);
    }
    ovs_answer_free(answer);
    return figures ? EXIT_SUCCESS : from_arrays();
}
