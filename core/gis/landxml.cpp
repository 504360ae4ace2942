#include "gis/landxml.h"

#include "gis/alignment_reader.h"
#include "method/quantity.h"
#include "method/rules/json_object.h"
#include "method/sentence.h"

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <expat.h>
#include <map>
#include <memory>
#include <numbers>

namespace groundcount::gis {
namespace {

using method::PlanPoint;

constexpr double kSmoothDeg = 0.05;   // a joint below is the rounding of a plan, not a corner
constexpr double kCloseMetres = 0.01;

struct Piece {
    bool curve = false;
    bool right = false;
    std::map<std::string, PlanPoint> points;  // Start, Center, End
};

struct Line {
    std::string name;
    std::string staStart;
    std::vector<Piece> pieces;
    std::vector<std::pair<std::string, std::string>> equations;  // back, ahead
    std::string fault;
};

struct Reading {
    XML_Parser parser = nullptr;
    std::string unit, epsg, fault, text;
    std::vector<std::string> stack;
    std::vector<Line> lines;
};

std::string attribute(const char** all, std::string_view key)
{
    for (; *all; all += 2)
        if (key == all[0])
            return all[1];
    return {};
}

void stop(Reading& r, const std::string& why)
{
    if (r.fault.empty())
        r.fault = why;
    XML_StopParser(r.parser, XML_FALSE);
}

void open(void* data, const char* element, const char** attributes)
{
    Reading& r = *static_cast<Reading*>(data);
    const std::string name = element;
    const std::string parent = r.stack.empty() ? std::string() : r.stack.back();
    r.stack.push_back(name);
    r.text.clear();
    if (r.stack.size() == 1 && name != "LandXML")
        return stop(r, "it begins with " + name);
    if (r.stack.size() > 64)
        return stop(r, "its elements lie deeper than 64");
    if (parent == "Units") {
        const std::string unit = attribute(attributes, "linearUnit");
        r.unit = unit == "meter" ? "m" : unit == "foot" ? "ft" : unit == "USSurveyFoot" ? "ftUS" : "";
        if (r.unit.empty())
            stop(r, "its linear unit must be meter, foot or USSurveyFoot; it is \"" + unit.substr(0, 40) + "\"");
        return;
    }
    if (name == "CoordinateSystem" && parent == "LandXML") {
        r.epsg = attribute(attributes, "epsgCode");
        return;
    }
    if (name == "Alignment" && parent == "Alignments") {
        r.lines.push_back({attribute(attributes, "name"), attribute(attributes, "staStart"), {}, {}, {}});
        return;
    }
    if (r.lines.empty())
        return;
    Line& line = r.lines.back();
    if (name == "StaEquation" && parent == "Alignment") {
        line.equations.emplace_back(attribute(attributes, "staBack"), attribute(attributes, "staAhead"));
    } else if (parent == "CoordGeom") {
        if (name == "Line" || name == "Curve")
            line.pieces.push_back({name == "Curve", attribute(attributes, "rot") == "cw", {}});
        else if (line.fault.empty())
            line.fault = "has a " + name.substr(0, 40) + "; only Line and circular Curve can be taken";
    }
}

void close(void* data, const char* element)
{
    Reading& r = *static_cast<Reading*>(data);
    const std::string name = element;
    r.stack.pop_back();
    if (r.stack.size() >= 2 && r.stack[r.stack.size() - 2] == "CoordGeom" && !r.lines.empty() && !r.lines.back().pieces.empty()
        && (name == "Start" || name == "Center" || name == "End")) {
        PlanPoint point;
        // Without a pntRef the text is "north east [elevation]".
        if (std::sscanf(r.text.c_str(), "%lf %lf", &point.northFt, &point.eastFt) == 2)
            r.lines.back().pieces.back().points[name] = point;
    }
    r.text.clear();
}

double azimuth(PlanPoint from, PlanPoint to)
{
    return std::atan2(to.eastFt - from.eastFt, to.northFt - from.northFt) * 180 / std::numbers::pi;
}

double distance(PlanPoint a, PlanPoint b)
{
    return std::hypot(a.northFt - b.northFt, a.eastFt - b.eastFt);
}

double turned(double degrees)
{
    return std::remainder(degrees, 360.0);
}

std::string decimal(double value, int places)
{
    char text[64];
    std::snprintf(text, sizeof text, "%.*f", places, value);
    return text;
}

/// The record's body, or the reason why the line cannot be taken.
Result<std::string> bodyOf(const Line& line, const std::string& unit, double metres)
{
    if (!line.fault.empty())
        return refused(line.fault);
    if (line.pieces.empty())
        return refused("has no geometry");
    char* end = nullptr;
    const double begin = std::strtod(line.staStart.c_str(), &end);
    if (line.staStart.empty() || *end != 0 || !std::isfinite(begin))
        return refused("must have a number as staStart; it is \"" + line.staStart.substr(0, 40) + "\"");
    nlohmann::json body{{"name", line.name.empty() ? "Alignment" : line.name}, {"unit", unit}, {"begin_station", line.staStart}};
    double ahead = 0;
    PlanPoint at{};
    for (std::size_t i = 0; i < line.pieces.size(); ++i) {
        const Piece& piece = line.pieces[i];
        const std::string place = "element " + std::to_string(i + 1);
        const auto start = piece.points.find("Start"), finish = piece.points.find("End"), centre = piece.points.find("Center");
        if (start == piece.points.end() || finish == piece.points.end() || (piece.curve && centre == piece.points.end()))
            return refused("has no two numbers for the points of " + place);
        double from = 0, to = 0, length = distance(start->second, finish->second);
        nlohmann::json element{{"kind", "line"}};
        if (piece.curve) {
            const double side = piece.right ? 90 : -90;
            const double radius = distance(start->second, centre->second);
            if (!(std::abs(radius - distance(finish->second, centre->second)) * metres <= kCloseMetres))
                return refused("has a curve in " + place + " whose ends are not equally far from its centre");
            from = azimuth(centre->second, start->second) + side;
            to = azimuth(centre->second, finish->second) + side;
            double arc = turned(to - from) * (piece.right ? 1 : -1);
            if (arc <= 0)
                arc += 360;
            length = radius * arc * std::numbers::pi / 180;
            element = {{"kind", "curve"}, {"radius", decimal(radius, 6)}, {"turn", piece.right ? "right" : "left"}};
        } else {
            from = to = azimuth(start->second, finish->second);
        }
        if (!(length > 0))
            return refused("has no length in " + place);
        element["length"] = decimal(length, 6);
        if (i == 0) {
            body["begin_north"] = decimal(start->second.northFt, 6);
            body["begin_east"] = decimal(start->second.eastFt, 6);
            body["begin_azimuth_deg"] = decimal(from < 0 ? from + 360 : from, 9);
        } else if (!(distance(at, start->second) * metres <= kCloseMetres)) {
            return refused("has a gap of " + shownNumber(distance(at, start->second)) + " " + unit + " before " + place);
        } else if (!(std::abs(turned(from - ahead)) <= kSmoothDeg)) {
            return refused("has a corner of " + shownNumber(std::abs(turned(from - ahead))) + " degrees before " + place);
        }
        body["elements"].push_back(element);
        at = finish->second;
        ahead = to;
    }
    for (const auto& [back, forward] : line.equations)
        body["equations"].push_back({{"back", back}, {"ahead", forward}});
    const std::string text = body.dump();
    const auto alignment = alignmentFrom(text);
    if (!alignment)
        return refused("cannot be set out: " + alignment.error().what);
    const auto last = alignment->stations().stationAt(alignment->lengthFt());
    const auto end2 = last ? alignment->at(*last, 0) : tl::unexpected(last.error());
    if (!end2 || !(distance(*end2, at) * metres <= kCloseMetres))
        return refused("set out from its begin misses its end by " + (end2 ? shownNumber(distance(*end2, at)) + " " + unit : "an unknown length"));
    return text;
}

}  // namespace

Result<SiteFile> parseLandXml(const std::string& text)
{
    const std::unique_ptr<std::remove_pointer_t<XML_Parser>, void (*)(XML_Parser)> parser(XML_ParserCreate(nullptr), XML_ParserFree);
    Reading reading;
    reading.parser = parser.get();
    XML_SetUserData(parser.get(), &reading);
    XML_SetElementHandler(parser.get(), open, close);
    XML_SetCharacterDataHandler(parser.get(), [](void* data, const char* part, int length) {
        auto& r = *static_cast<Reading*>(data);
        if (r.text.size() < 4096)
            r.text.append(part, static_cast<std::size_t>(length));
    });
    XML_SetStartDoctypeDeclHandler(parser.get(), [](void* data, const char*, const char*, const char*, int) {
        stop(*static_cast<Reading*>(data), "it declares a document type, whose entities are not expanded");
    });
    const auto status = XML_Parse(parser.get(), text.data(), static_cast<int>(text.size()), 1);
    if (!reading.fault.empty())
        return refused("The LandXML file is not taken: " + reading.fault + ".");
    if (status != XML_STATUS_OK)
        return refused("The LandXML file is not well-formed: " + std::string(XML_ErrorString(XML_GetErrorCode(parser.get()))) + " in line "
                       + std::to_string(XML_GetCurrentLineNumber(parser.get())) + ".");
    if (reading.unit.empty())
        return refused("The LandXML file must state its linear unit; it has no Units.");
    SiteFile file;
    file.format = "LandXML";
    file.unit = reading.unit;
    file.crsName = reading.epsg.empty() ? "" : "EPSG:" + reading.epsg;
    const double metres = reading.unit == "m" ? 1.0 : reading.unit == "ft" ? kMetrePerFoot : kMetrePerSurveyFoot;
    for (const Line& line : reading.lines) {
        const auto body = bodyOf(line, reading.unit, metres);
        if (body)
            file.alignments.push_back(*body);
        else
            file.notes.push_back("Alignment \"" + line.name + "\" " + body.error().what + ".");
    }
    if (file.alignments.empty())
        return refused("The LandXML file has no alignment that can be taken" + (file.notes.empty() ? "." : ": " + file.notes.front()));
    return file;
}

}  // namespace groundcount::gis
