using System.Net;
using System.Net.Sockets;

namespace StudioBot.Host.Tests.Support;

/// <summary>A port on loopback that nobody has at this moment.</summary>
internal static class FreePort
{
    public static int Any()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
