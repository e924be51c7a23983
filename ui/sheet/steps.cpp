#include "sheet/steps.hpp"

#include "sheet/fitting.hpp"

#include <algorithm>
#include <cmath>

namespace rampwright::ui::paper {
namespace {

/// Whether the plan's list of what is done in wood says one of these words.
bool says_done(const CarPlan& plan, std::initializer_list<const char*> words) {
    return std::any_of(words.begin(), words.end(), [&](const char* word) { return is_done(plan, word); });
}

/// On which side of the line to saw, and what the blade takes.
QString saw_words(const Job& job) {
    const double kerf = job.project.tools.saw_kerf;
    if (!(kerf > 0)) return Words::tr("Saw on the outside of the line, in what falls away.");
    return Words::tr("Saw on the outside of the line, in what falls away: the blade takes %1.")
        .arg(job.words.length(kerf));
}

void add_wood_steps(const Job& job, std::vector<Step>& steps) {
    const CarPlan& plan = job.plan;
    const Words& words = job.words;
    const bool sawn = says_done(plan, {"sawn", "cut"}), drilled = says_done(plan, {"drilled"});
    steps.push_back(
        {Words::tr("Weigh and measure the block"),
         Words::tr("Weigh the block, measure length, width and height (planned: %1 × %2 × %3), and type "
                   "them into the project: the balance shifts with the wood.")
             .arg(words.length(plan.body.block.x()), words.length(plan.body.block.y()),
                  words.length(plan.body.block.z())),
         {},
         {},
         says_done(plan, {"block weighed", "weighed"})});
    steps.push_back(
        {Words::tr("Print and check the templates"),
         Words::tr("Measure the two bars on the template page, cut the templates out with scissors, glue "
                   "them on the block: side template on the right side, top template on the top."),
         Words::tr("Look once more that bottom and tail edges lie on the block's edges."),
         {},
         sawn});
    const QString holes =
        Holes::slots == plan.axles.holes
            ? Words::tr("Saw the axle slots from the bottom, square across, while the block is square.")
        : plan.axles.holes == Holes::jig
            ? Words::tr("Drill the axle holes in a jig, from both sides, while the block is square.")
            : Words::tr("Drill the axle holes on a drill press, while the block is square.");
    steps.push_back({Words::tr("Axle holes"),
                     Words::tr("Mark the middles with a nail's point through the template."),
                     holes,
                     {plan.axles.holes == Holes::slots ? "saw" : "drill"},
                     drilled});
    if (is_sawn(job, View::side))
        steps.push_back(
            {Words::tr("Saw the side shape"),
             Words::tr("Keep the offcuts: they hold the car level later on."),
             saw_words(job) + QLatin1Char(' ') + Words::tr("Tape the offcuts back on for the next cuts."),
             {"saw"},
             sawn});
    if (!plan.body.cuts.empty())
        steps.push_back({Words::tr("Pockets and bores"),
                         Words::tr("Mark every depth on the bit with tape, by the drill and pocket map; try "
                                   "each weight in its place."),
                         Words::tr("Drill and chisel by the map, the block clamped between scraps."),
                         {"drill"},
                         drilled});
    if (is_sawn(job, View::top))
        steps.push_back({Words::tr("Saw the top shape"), {}, saw_words(job), {"saw"}, sawn});
    const QString round =
        plan.body.edge_radius > 0
            ? Words::tr("Sand to the line, edges rounded to %1.").arg(words.length(plan.body.edge_radius))
            : Words::tr("Sand to the line; break the edges a little.");
    steps.push_back({Words::tr("Sand"),
                     round,
                     Words::tr("Sand with the first, coarse paper; the child goes on with the fine ones."),
                     {"sanding"},
                     says_done(plan, {"sanded"})});
}

void add_weight_steps(const Job& job, std::vector<Step>& steps) {
    const CarPlan& plan = job.plan;
    if (plan.ballast.empty()) return;
    std::vector<std::string> codes;
    bool lead = false;
    for (const BallastPlan& piece : plan.ballast) {
        const auto more = piece_cautions(piece);
        codes.insert(codes.end(), more.begin(), more.end());
        lead = lead || piece.material == "lead";
    }
    if (lead) codes.push_back("hot-metal");
    steps.push_back(
        {Words::tr("Dry fit and weigh"),
         Words::tr("Lay all parts on the scale together, with paint and glue still to come; compare with the "
                   "weight schedule."),
         lead ? Words::tr("Handle the lead.") : QString(),
         lead ? std::vector<std::string>{"lead", "small-parts"} : std::vector<std::string>{"small-parts"},
         false});
    steps.push_back(
        {Words::tr("Fix the weights"),
         Words::tr("Hand over the pieces in the order of the ballast map; tick them there."),
         Words::tr("Fix each weight as the ballast map says; let it set before the car is moved."), codes,
         says_done(plan, {"ballasted", "weights fixed"})});
}

} // namespace

bool is_sawn(const Job& job, View view) {
    const Vec3& size = job.plan.body.block;
    const double across = view == View::side ? size.z() : size.y();
    const QPainterPath& outline = job.shape.wood[index(view)];
    const QRectF box = outline.boundingRect();
    return outline.elementCount() > 5 || std::abs(box.width() - size.x()) >= 1e-6 ||
           std::abs(box.height() - across) >= 1e-6;
}

std::vector<Step> build_steps(const Job& job) {
    std::vector<Step> steps;
    add_wood_steps(job, steps);
    steps.push_back({Words::tr("Paint"),
                     Words::tr("Wipe off the dust, paint thin coats, keep paint out of the axle holes. "
                               "Planned: %1 of paint and decals.")
                         .arg(job.words.mass(job.plan.body.finish)),
                     Words::tr("Mix and spray, outdoors."),
                     {"solvent"},
                     says_done(job.plan, {"painted"})});
    add_weight_steps(job, steps);
    steps.push_back(
        {Words::tr("Wheels and axles"),
         Words::tr("Polish the axles with finer and finer paper, wet; spin every wheel and keep the "
                   "straightest ones for the rear and the touching front."),
         Words::tr(
             "Turn the axles in a drill, clamped, while they are polished; file burrs off under the heads."),
         {"drill"},
         says_done(job.plan, {"polished"})});
    steps.push_back(
        {Words::tr("Lubricate"),
         Words::tr("A pinch of dry powder into each bore, over paper; spin; wipe off what is loose."),
         Words::tr("Ask first which lubricants the local rules allow."),
         {"graphite"},
         false});
    steps.push_back({Words::tr("Fit the wheels"),
                     Words::tr("Set each gap with a card; see that every wheel spins freely."),
                     Words::tr("Push the axles in straight, to the cant and steer of the wheel page."),
                     {},
                     false});
    steps.push_back({Words::tr("Aim on the drift board"),
                     Words::tr("Roll the car and read the drift, as on the wheel page."),
                     Words::tr("Turn the axle between rolls."),
                     {},
                     false});
    steps.push_back(
        {Words::tr("Weigh and trim"),
         Words::tr(
             "Weigh the finished car three times, write all three down, and trim by the race-night card."),
         {},
         {},
         false});
    steps.push_back({Words::tr("Inspect"),
                     Words::tr("Go through the inspection list with a ruler, as the inspector will."),
                     {},
                     {},
                     false});
    return steps;
}

std::vector<Deadline> deadlines(const Job& job) {
    constexpr int hour = 60, day = 24 * hour;
    std::vector<Deadline> list;
    list.push_back({7 * day, Words::tr("Block weighed, templates glued on, tools and weights in the house"),
                    Words::tr("nothing: start here")});
    list.push_back({6 * day, Words::tr("Axle holes drilled, shape sawn, pockets cut"),
                    Words::tr("the top shape and round edges can stay as the block is")});
    list.push_back({4 * day, Words::tr("Sanded"), Words::tr("fine sanding: looks only")});
    list.push_back({3 * day, Words::tr("First coat of paint on"),
                    Words::tr("paint: a bare car rolls as well. Add its %1 as putty")
                        .arg(job.words.mass(job.plan.body.finish))});
    list.push_back({2 * day, Words::tr("Last coat of paint on: paint stays soft for a day"),
                    Words::tr("decals and a second coat")});
    if (!job.plan.ballast.empty())
        list.push_back({36 * hour,
                        Words::tr("Weights glued in: two-part glue is hard overnight, wood glue after a day"),
                        Words::tr("glue: a screw or strong tape holds at once, where the rules allow it")});
    list.push_back(
        {30 * hour, Words::tr("Axles polished, wheels sorted"), Words::tr("the last, finest polish")});
    list.push_back({24 * hour, Words::tr("Wheels on, gaps set, drift board done"),
                    Words::tr("if a wheel steers hard, set it straight and leave it")});
    list.push_back(
        {18 * hour, Words::tr("Weighed, trimmed, gone through the inspection list"), Words::tr("never")});
    list.push_back({2 * hour, Words::tr("Lubricated, weighed once more, spare parts packed"),
                    Words::tr("never the weighing")});
    list.push_back({45, Words::tr("At the weigh-in"), Words::tr("never")});
    list.push_back({0, Words::tr("First heat"), {}});
    return list;
}

} // namespace rampwright::ui::paper
